package groupwright.documents.project;

import groupwright.definition.record.Need;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.RiderGroup;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** What riders said, in few words. */
final class VoiceBlocks {
    private static final double USUAL_MOST = 3;

    private VoiceBlocks() {}

    /**
     * For each rider group its weightiest needs in its own words: musts first, then in the order of ids.
     *
     * @param arguments {@code most=3} says how many of each group
     */
    static BlockAnswer voices(Sheet sheet, String arguments) {
        long most = Math.round(BlockArguments.of("voices", arguments, List.of("most"))
                .number("most")
                .orElse(USUAL_MOST));
        List<Phrase> items = new ArrayList<>();
        for (RiderGroup group : sheet.assessment().riderGroups()) {
            String said = sheet.definition().all(RecordKinds.NEED).stream()
                    .filter(need -> need.isCurrent() && need.riders().contains(group.id()))
                    .sorted(Comparator.comparing(Need::importance)) // stable, so ids keep their order
                    .limit(most)
                    .map(need -> sheet.quoted(need) + " (" + need.id() + ")")
                    .collect(Collectors.joining(" "));
            if (!said.isEmpty()) {
                items.add(Phrase.of(new Inline.Plain(group.title() + ": " + said)));
            }
        }
        return new BlockAnswer.Items(items);
    }
}
