package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.markdown.MarkdownRenderer;
import groupwright.documents.template.Expansion;
import groupwright.documents.template.Problem;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Templates of random loops, conditions, placeholders and rubbish: each is filled whole or refused with its place. */
class RandomTemplateTest {
    private static final int SEEDS = 300;
    private static final Bench BENCH = Bench.sample();
    private static final List<String> FENCES = List.of(
            "each rider",
            "each concept",
            "each bike",
            "each need of rider importance=must",
            "each line",
            "each milestone",
            "each requirement of rider state=agreed",
            "if rider.description",
            "if not any claim state=approved",
            "if gear-range lead at least 480",
            "if requirement.state is agreed",
            "riders",
            "gears lead",
            "gears concept",
            "gear-ladder rider",
            "step-bars lead",
            "open",
            "text",
            "each",
            "if",
            "each rider of",
            "if lead at",
            "eahc rider");
    private static final List<String> LINES = List.of(
            "# Heading {{ lead.id }}",
            "## {{ rider.title }}",
            "- {{ gear-range lead unit=none }}",
            "> quote",
            "{{ mass-basic lead unit=lb decimals=2 }} of {{ lead.title }}",
            "{{ requirement.statement }}",
            "| a | b |",
            "|---|---|",
            "| {{ rider }} | {{ concept.cogs }} |",
            "{{ gear-range concept }}",
            "{{",
            "}} x",
            "{{ }}",
            "***",
            "<b>",
            "<!-- c -->",
            "    code",
            "[a]: http://x",
            "[a](http://x)",
            "1. one",
            "\\{{ a }}",
            "{{ rider.nothing }}",
            "{{ gear-range C-009 }}",
            "\t- tab",
            "```",
            "~~~~",
            "plain words");

    private static String template(Random random) {
        StringBuilder text = new StringBuilder();
        section(random, text, 3 + random.nextInt(4), random.nextInt(3) > 0);
        return text.toString();
    }

    /** With care, only what may work; else anything. */
    private static void section(Random random, StringBuilder text, int fence, boolean careful) {
        int parts = 1 + random.nextInt(5);
        for (int i = 0; i < parts; i++) {
            if (random.nextInt(3) == 0 && fence > 2) {
                String ticks = "`".repeat(fence + (careful ? 0 : random.nextInt(2)));
                text.append(ticks)
                        .append(FENCES.get(random.nextInt(careful ? 14 : FENCES.size())))
                        .append('\n');
                section(random, text, fence - 1, careful);
                text.append(careful || random.nextInt(6) > 0 ? ticks + "\n" : "");
            } else {
                int line = random.nextInt(careful ? 6 : LINES.size());
                text.append(LINES.get(line)).append(random.nextBoolean() ? "\n\n" : "\n");
            }
        }
    }

    @Test
    void itIsFilledWholeOrRefusedWithItsPlace() {
        int complete = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            String template = template(new Random(seed));
            Expansion expansion = expand(seed, template);
            complete += expansion instanceof Expansion.Complete ? 1 : 0;
            check(expansion, template, "seed " + seed);
        }
        assertTrue(complete > SEEDS / 10 && complete < SEEDS * 9 / 10, complete + " are complete: both must happen");
    }

    private static Expansion expand(long seed, String template) {
        try {
            return BENCH.expand(template);
        } catch (RuntimeException | StackOverflowError thrown) {
            throw new AssertionError("seed " + seed + ":\n" + template, thrown);
        }
    }

    private static void check(Expansion expansion, String template, String seed) {
        if (expansion instanceof Expansion.Complete complete) {
            assertTrue(new MarkdownRenderer().render(complete.document()).contains("Annex A"), seed);
            return;
        }
        List<String> lines = template.lines().toList();
        for (Problem problem : ((Expansion.Refused) expansion).problems()) {
            String hint = seed + ": " + problem.sentence() + "\n" + template;
            assertTrue(problem.line() <= lines.size(), hint);
            assertTrue(problem.column() <= lines.get(problem.line() - 1).length() + 1, hint);
        }
    }
}
