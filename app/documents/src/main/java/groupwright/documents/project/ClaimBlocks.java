package groupwright.documents.project;

import groupwright.definition.assessment.Assessment.ClaimStanding;
import groupwright.definition.assessment.ClaimState;
import groupwright.definition.figure.LiveText;
import groupwright.definition.record.Approval;
import groupwright.definition.record.Claim;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.List;

/** Claims: what may be said, and what may not be said now. The wording of a claim is given only while it holds. */
final class ClaimBlocks {
    private ClaimBlocks() {}

    /** The claims that hold, with their basis. */
    static BlockAnswer holding(Sheet sheet, String arguments) {
        List<Column> columns = List.of(
                sheet.textColumn("block.id"),
                sheet.textColumn("claims.wording"),
                sheet.textColumn("claims.basis"),
                sheet.textColumn("claims.channel"),
                sheet.textColumn("claims.approved"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (ClaimStanding standing : sheet.assessment().claims()) {
            if (standing.state() == ClaimState.HOLDS) {
                Claim claim = standing.claim();
                Approval last = claim.approvals().get(claim.approvals().size() - 1);
                rows.add(List.of(
                        Phrase.of(claim.id().text()),
                        wording(sheet, claim),
                        claim.basis().isEmpty() ? sheet.plain("") : live(sheet, claim.basis()),
                        sheet.plain(claim.channel()),
                        Phrase.of(last.by() + ", " + sheet.reader().day(last.date()))));
            }
        }
        return new BlockAnswer.Table(columns, rows);
    }

    /** The wording with its numbers live. */
    static Phrase wording(Sheet sheet, Claim claim) {
        return live(sheet, claim.wording());
    }

    private static Phrase live(Sheet sheet, String text) {
        List<Inline> parts = new ArrayList<>();
        for (LiveText.Segment segment : LiveText.parse(text).segments()) {
            if (segment instanceof LiveText.Plain plain) {
                parts.add(new Inline.Plain(plain.text()));
            } else if (segment instanceof LiveText.Live live) {
                parts.add(sheet.live(live.figure()
                        .resolve(sheet.view().catalogue(), sheet.assessment().lead())));
            }
        }
        return new Phrase(parts);
    }

    /** The other claims by id and state, with what changed or lacks; never with their wording. */
    static BlockAnswer others(Sheet sheet, String arguments) {
        List<Column> columns =
                List.of(sheet.textColumn("block.id"), sheet.textColumn("claims.state"), sheet.textColumn("claims.why"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (ClaimState state : ClaimState.values()) {
            for (ClaimStanding standing : sheet.assessment().claims()) {
                if (standing.state() == state && state != ClaimState.HOLDS) {
                    rows.add(List.of(
                            Phrase.of(standing.claim().id().text()),
                            Phrase.of(sheet.labels().text("claim." + state.name())),
                            sheet.plain(why(standing))));
                }
            }
        }
        return new BlockAnswer.Table(columns, rows);
    }

    /** What the ledger finds, or else what people noted. */
    private static String why(ClaimStanding standing) {
        return standing.detail().isEmpty() ? standing.claim().stateReason() : standing.detail();
    }
}
