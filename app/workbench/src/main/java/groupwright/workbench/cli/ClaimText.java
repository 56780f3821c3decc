package groupwright.workbench.cli;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.LiveText;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Invalid;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;

/** The wording of claims with today's numbers in it. */
final class ClaimText {
    private final OpenProject project;
    private final AnswerText text;

    ClaimText(OpenProject project, Reader reader) {
        this.project = project;
        this.text = new AnswerText(reader);
    }

    /** As it would be said today; as it is written where a figure in it is broken, which the claim's state tells. */
    String wording(Claim claim) {
        try {
            StringBuilder words = new StringBuilder();
            for (LiveText.Segment segment : LiveText.parse(claim.wording()).segments()) {
                words.append(segment instanceof LiveText.Live live ? live(live) : ((LiveText.Plain) segment).text());
            }
            return words.toString();
        } catch (Invalid broken) {
            return claim.wording();
        }
    }

    private String live(LiveText.Live live) {
        Ask ask = live.figure()
                .resolve(project.view().catalogue(), project.assessment().lead());
        return text.of(ask, project.view().ask(ask)).text();
    }
}
