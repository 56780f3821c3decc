package groupwright.documents.sample;

import groupwright.documents.charts.SampleCharts;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.content.Verdict;
import groupwright.documents.trace.ShownValue;
import groupwright.documents.trace.TraceEntry;
import groupwright.documents.tree.DocumentTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random templates with everything a template may hold, and random answers. The same seed gives the same document. */
public final class RandomDocument {
    private static final List<String> WORDS = List.of(
            "the",
            "chain",
            "runs",
            "straight",
            "in",
            "every",
            "gear",
            "*softly*",
            "**firmly**",
            "`cogs`",
            "and",
            "so",
            "widergestellteKettenblattgruppenabstimmung",
            "on");

    private final Random random;
    private final List<TraceEntry> entries = new ArrayList<>();
    private final StringBuilder template = new StringBuilder();

    private RandomDocument(long seed) {
        this.random = new Random(seed);
        for (int i = 0; i < 30; i++) {
            String value = (random.nextBoolean() ? "\u2212" : "") + random.nextInt(10_000) / 10.0;
            entries.add(Sample.entry(
                    "Figure " + i % 5, "figure-" + i + " C-002", "C-002", value, random.nextBoolean() ? "mm" : ""));
        }
    }

    /** A document of several pages. */
    public static DocumentTree of(long seed) {
        return new RandomDocument(seed).document();
    }

    private DocumentTree document() {
        Sample content = Sample.empty()
                .with("ladder", new BlockAnswer.Drawing(SampleCharts.ladder(), List.of()))
                .with("bars", new BlockAnswer.Drawing(SampleCharts.bars(), List.of()))
                .with("v", TextAnswer.of(new Inline.Judged(any(List.of(Verdict.values())))));
        for (int i = 0; i < entries.size(); i++) {
            content = content.with("n" + i, TextAnswer.of(Inline.Live.of(entries.get(i))));
        }
        for (int i = 0; i < 4; i++) {
            content = content.with("table" + i, table());
        }
        for (int i = 0; i < 25; i++) {
            part(i % 4);
        }
        return Sample.document(template.toString(), content);
    }

    private void part(int table) {
        String text = sentence();
        switch (random.nextInt(7)) {
            case 0 ->
                template.append("#".repeat(1 + random.nextInt(4))).append(' ').append(text);
            case 1 -> template.append("> ").append(text).append("\n>\n> ").append(sentence());
            case 2 -> template.append("- ").append(text).append("\n  - ").append(sentence());
            case 3 ->
                template.append("```table")
                        .append(table)
                        .append("\nCaption ")
                        .append(text)
                        .append("\n```");
            case 4 -> template.append(random.nextBoolean() ? "```ladder\n```" : "```bars\n```");
            default -> template.append(text);
        }
        template.append("\n\n");
    }

    private String sentence() {
        StringBuilder text = new StringBuilder("It");
        int length = 3 + random.nextInt(50);
        for (int i = 0; i < length; i++) {
            int kind = random.nextInt(10);
            text.append(' ')
                    .append(
                            kind == 0
                                    ? "{{ n" + random.nextInt(entries.size()) + " }}"
                                    : kind == 1 ? "{{ v }}" : any(WORDS));
        }
        return text.append('.').toString();
    }

    private BlockAnswer.Table table() {
        List<List<Phrase>> rows = new ArrayList<>();
        int count = 1 + random.nextInt(40);
        for (int i = 0; i < count; i++) {
            TraceEntry entry = any(entries);
            Inline bare = new Inline.Live(ShownValue.of(entry.shown().value()), entry);
            Inline bar = new Inline.Bar(
                    random.nextGaussian() / 10, java.util.Optional.empty(), any(List.of(Verdict.values())));
            rows.add(List.of(Phrase.of("row " + i), Phrase.of(bare), Phrase.of(bar), Phrase.of(any(entries))));
        }
        return new BlockAnswer.Table(
                List.of(Column.text("Row"), Column.number("Bare"), Column.text("Bar"), Column.number("With unit")),
                rows);
    }

    private <T> T any(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
