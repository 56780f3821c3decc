package groupwright.documents.project;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Missing;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** The way of the chain in each gear of a concept on a bike, suspension at rest, and the worst over its travel. */
final class GearPathBlocks {
    private static final String BLOCK = "gear-paths";

    /** Largest ring first, as concepts list them, then smallest cog. */
    private static final Comparator<String> BY_WHEELS =
            Comparator.<String>comparingInt(gear -> -teeth(gear, 0)).thenComparingInt(gear -> teeth(gear, 1));

    private final Sheet sheet;
    private final Bike bike;
    private final String subject;
    private final Map<GearPath, GearSeries> series = new EnumMap<>(GearPath.class);
    private final GearTrouble trouble;

    private GearPathBlocks(Sheet sheet, RecordId concept, Bike bike) {
        this.sheet = sheet;
        this.bike = bike;
        this.subject = " " + concept + " " + bike.id();
        for (GearPath path : GearPath.values()) {
            series.put(path, GearSeries.of(sheet, path.each() + subject));
        }
        this.trouble = GearTrouble.of(sheet, concept, bike, series.get(GearPath.GAP));
    }

    private static int teeth(String gear, int wheel) {
        return Integer.parseInt(gear.split("/")[wheel]);
    }

    /**
     * One row a gear in use.
     *
     * @param arguments a concept, or lead, and a bike
     */
    static BlockAnswer paths(Sheet sheet, String arguments) {
        BlockArguments read = BlockArguments.of(BLOCK, arguments, List.of());
        Bike bike = only(sheet, read, Bike.class).stream()
                .findFirst()
                .orElseThrow(
                        () -> new Invalid("", BLOCK + " names no bike", "write for example " + BLOCK + " lead B-001"));
        RecordId concept = only(sheet, read, Concept.class).stream()
                .map(Concept::id)
                .findFirst()
                .orElseGet(sheet::lead);
        if (read.read().records().size() > 2) {
            throw new Invalid("", BLOCK + " takes one concept and one bike", "write a block for each");
        }
        Ask path = sheet.ask("chain-path " + concept + " " + bike.id());
        return sheet.view().ask(path) instanceof Missing missing
                ? new BlockAnswer.Paragraph(Phrase.of(sheet.labels()
                                .text(
                                        "gearPaths.missing",
                                        concept.text(),
                                        bike.id().text())
                        + " " + new MissingText(sheet.labels()).remedies(missing.inputs(), Object::toString) + "."))
                : new GearPathBlocks(sheet, concept, bike).table();
    }

    /** The records of a kind among those named; another kind than concept and bike is refused. */
    private static <T extends Entry> List<T> only(Sheet sheet, BlockArguments read, Class<T> kind) {
        List<T> found = new ArrayList<>();
        for (RecordId id : read.read().records()) {
            Entry record = sheet.existing(id);
            if (kind.isInstance(record)) {
                found.add(kind.cast(record));
            } else if (!(record instanceof Bike) && !(record instanceof Concept)) {
                throw new Invalid("", BLOCK + " takes a concept and a bike, not " + id, "name those");
            }
        }
        return found;
    }

    private BlockAnswer table() {
        List<Column> columns = new ArrayList<>(List.of(sheet.numberColumn("gearPaths.gear")));
        for (GearPath path : GearPath.values()) {
            columns.add(sheet.numberColumn(path.head(), series.get(path).unit()));
        }
        columns.add(sheet.textColumn("gearPaths.remark"));
        TreeSet<String> gears = new TreeSet<>(BY_WHEELS);
        series.values().forEach(of -> gears.addAll(of.values().keySet()));
        List<List<Phrase>> rows = new ArrayList<>();
        gears.forEach(gear -> rows.add(row(gear)));
        rows.add(worst());
        return new BlockAnswer.Table(columns, rows);
    }

    private List<Phrase> row(String gear) {
        List<Phrase> row = new ArrayList<>(List.of(Phrase.of(gear.replace("/", " / "))));
        for (GearPath path : GearPath.values()) {
            row.add(series.get(path).cell(gear));
        }
        row.add(remark(gear));
        return row;
    }

    /** Why the gear does not close, then in what it is the worst of all. */
    private Phrase remark(String gear) {
        List<Inline> parts = new ArrayList<>(trouble.of(gear));
        for (GearPath path : GearPath.values()) {
            if (path.hasWorst() && series.get(path).isWorst(gear, path.worstIs())) {
                if (!parts.isEmpty()) {
                    parts.add(new Inline.Plain(sheet.labels().text("list.separator")));
                }
                parts.add(new Inline.Plain(sheet.labels().text(path.remark())));
            }
        }
        return new Phrase(parts);
    }

    private List<Phrase> worst() {
        boolean springs = bike.chainGrowth_mm().value() > 0;
        List<Phrase> row = new ArrayList<>(
                List.of(Phrase.of(sheet.labels().text(springs ? "gearPaths.worstOfTravel" : "gearPaths.worst"))));
        for (GearPath path : GearPath.values()) {
            row.add(path.hasWorst() ? Phrase.of(sheet.bare(sheet.ask(path.worst() + subject))) : Phrase.of(""));
        }
        row.add(Phrase.of(""));
        return row;
    }
}
