package groupwright.workbench.documents;

import groupwright.documents.project.Obstacle;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.Prose;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.EndsLayout;
import groupwright.workbench.workings.StackLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;

/** What stands in the way of a document, one sentence each, with a link to the place in the template. */
final class Obstacles extends JPanel {
    /** One of them. */
    record One(String sentence, Optional<Obstacle.Place> place) {}

    /**
     * @param followed told the place whose link was followed
     */
    Obstacles(List<One> all, Words words, Consumer<Obstacle.Place> followed) {
        super(new StackLayout(Metric.HALF_STEP.px()));
        setOpaque(false);
        for (One one : all) {
            JPanel row = new JPanel(new EndsLayout(Metric.GAP.px(), Metric.ROW.px()));
            row.setOpaque(false);
            row.add(new Prose(one.sentence(), Type.TABLE, Token.INK));
            one.place().ifPresent(place -> {
                LinkLabel link = new LinkLabel(
                        words.text("obstacle.line", Integer.toString(place.line())), () -> followed.accept(place));
                link.setName("documents.obstacle." + place.line());
                row.add(link);
            });
            add(row);
        }
    }

    static One plain(String sentence) {
        return new One(sentence, Optional.empty());
    }

    static List<One> of(List<Obstacle> obstacles) {
        return obstacles.stream()
                .map(obstacle -> new One(obstacle.sentence(), obstacle.place()))
                .toList();
    }

    /** A sentence as problems hold it. */
    static String withoutStop(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
