package groupwright.workbench.claims;

import groupwright.definition.record.Approval;
import groupwright.definition.record.Claim;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What is open with a claim, in a few words for its row. */
final class OpenWords {
    private final Words words;

    OpenWords(Words words) {
        this.words = words;
    }

    String of(Claim claim, ClaimGroup group, Wording wording, List<Rest> rests) {
        return switch (group) {
            case RETIRED -> claim.retired();
            case WITHDRAWN -> claim.stateReason();
            case UNSUPPORTED -> unsupported(wording, rests);
            case CHANGED -> changed(claim, rests);
            case PROPOSED -> proposed(wording, rests);
            case HOLDING -> holding(rests);
        };
    }

    private static Optional<Rest> first(List<Rest> rests, Predicate<Rest> which) {
        return rests.stream().filter(which).findFirst();
    }

    private static boolean isMissing(Rest rest) {
        return rest.kind() == Rest.Kind.MISSING;
    }

    private String missing(Rest rest) {
        boolean test = rest.ask().figure().id().equals("test-result")
                || rest.ask().figure().id().equals("verdict");
        return test ? words.text("open.untested", of(rest)) : words.text("open.missing", rest.name());
    }

    private String unsupported(Wording wording, List<Rest> rests) {
        return wording.wrong().stream()
                .findFirst()
                .orElseGet(() -> first(rests, OpenWords::isMissing)
                        .map(this::missing)
                        .orElse(words.text(rests.isEmpty() ? "open.nothing" : "open.broken")));
    }

    private String changed(Claim claim, List<Rest> rests) {
        Optional<Rest> untrue =
                first(rests, rest -> rest.misses() && !rest.limit().isEmpty());
        if (untrue.isPresent()) {
            return words.text("open.not", untrue.get().limit());
        }
        Optional<Rest> missed = first(rests, Rest::misses);
        if (missed.isPresent()) {
            return words.text("open.misses", of(missed.get()));
        } else if (rests.stream().anyMatch(rest -> rest.isTooClose() && rest.hasMoved())) {
            return words.text("open.close");
        } else if (!Approved.last(claim).map(Approval::wording).equals(Optional.of(claim.wording()))) {
            return words.text("open.wording");
        } else if (rests.stream().anyMatch(rest -> rest.move() == Rest.Move.MOVED)) {
            return words.text("open.still");
        }
        return words.text("open.recalculated");
    }

    private static String of(Rest rest) {
        return rest.leads().map(address -> address.record().text()).orElse(rest.name());
    }

    private String proposed(Wording wording, List<Rest> rests) {
        if (!wording.wrong().isEmpty()) {
            return wording.wrong().get(0);
        }
        Optional<Rest> missed = first(rests, Rest::misses);
        if (missed.isPresent()) {
            return words.text("open.misses", of(missed.get()));
        }
        return first(rests, OpenWords::isMissing)
                .map(this::missing)
                .orElseGet(() -> words.text(rests.stream().anyMatch(Rest::isTooClose) ? "open.close" : "open.ready"));
    }

    private String holding(List<Rest> rests) {
        return rests.stream().anyMatch(Rest::isTooClose) ? words.text("open.close") : "";
    }
}
