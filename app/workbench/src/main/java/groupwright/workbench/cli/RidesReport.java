package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figures.RideSums;
import groupwright.definition.problem.Problem;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.workbench.cli.TextTable.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Predicted rides, for people and for machines.
 *
 * @param opened the project
 * @param asks a ride each
 * @param ground the track they are ridden on; nothing for each group's terrain
 */
record RidesReport(OpenProject opened, List<Ask> asks, Optional<GpxGround> ground) {
    private static final List<String> HEADS = List.of(
            "concept", "riders", "km/h", "comfort %", "shifts/h", "cogs/h", "front/h", "walking %", "grinding %", "kJ");

    /** Points of the track that were left out. */
    List<Problem> leftOut() {
        return ground.stream()
                .flatMap(track -> track.problems().stream())
                .map(sentence -> Problem.ofFile("", sentence, ""))
                .toList();
    }

    /** A ride each, or what it lacks. */
    ObjectNode json() {
        ObjectNode answer = JsonText.start();
        ground.ifPresent(track -> answer.set("track", track(track)));
        answer.set("rides", JsonText.list(asks, this::ride));
        List<Problem> problems = new ArrayList<>(opened.problems());
        problems.addAll(leftOut());
        answer.set("problems", JsonText.problems(problems));
        return answer;
    }

    private static ObjectNode track(GpxGround track) {
        ObjectNode node = JsonText.NODES.objectNode().put("file", track.file());
        node.set("length_km", JsonText.number(track.profile().lengthM() / 1000));
        node.set("ascent_m", JsonText.number(track.profile().ascentM()));
        return node;
    }

    private ObjectNode ride(Ask ask) {
        ObjectNode node = JsonText.NODES.objectNode();
        node.set("subject", AnswerJson.subject(ask.subject()));
        Answer answer = opened.view().ask(ask);
        if (answer instanceof Missing missing) {
            AnswerJson.addMissing(node, missing.inputs());
            return node;
        }
        RideSums sums = RideSums.of((Series) answer);
        node.set("length_km", JsonText.number(sums.lengthKm()));
        node.set("time_h", JsonText.number(sums.hours()));
        node.set("averageSpeed_kmh", JsonText.number(sums.averageKmh()));
        node.set("cadenceComfort_pct", JsonText.number(sums.comfortPct()));
        node.set("shiftActions_per_h", JsonText.number(sums.shiftsPerHour()));
        node.set("cogsShifted_per_h", JsonText.number(sums.cogsPerHour()));
        node.set("frontShifts_per_h", JsonText.number(sums.frontShiftsPerHour()));
        node.set("walkingTime_pct", JsonText.number(sums.walkingPct()));
        node.set("grindingTime_pct", JsonText.number(sums.grindingPct()));
        node.set("work_kJ", JsonText.number(sums.workKj()));
        return node;
    }

    /** A row for each ride, and below the table what the others lack. */
    String text(Reader reader) {
        List<Side> sides = new ArrayList<>(Collections.nCopies(HEADS.size(), Side.RIGHT));
        sides.set(0, Side.LEFT);
        sides.set(1, Side.LEFT);
        TextTable table = new TextTable(sides).row(HEADS.toArray(String[]::new));
        StringBuilder lacking = new StringBuilder();
        boolean any = false;
        for (Ask ask : asks) {
            if (opened.view().ask(ask) instanceof Series series) {
                any = true;
                table.row(row(ask, RideSums.of(series), reader));
            } else if (opened.view().ask(ask) instanceof Missing missing) {
                lacking.append("no ride of ").append(ask.subject()).append(": ");
                lacking.append(new AnswerText(reader).missing(missing)).append(".\n");
            }
        }
        return ground(reader) + (any ? "\n" + table : "") + (lacking.isEmpty() ? "" : "\n" + lacking);
    }

    private String ground(Reader reader) {
        String wind = asks.stream()
                .map(ask -> ask.parameters().get("headwind").orElse("0"))
                .filter(speed -> !speed.equals("0"))
                .findFirst()
                .map(speed -> ", headwind " + reader.exact(Double.parseDouble(speed)) + " km/h")
                .orElse("");
        if (ground.isPresent()) {
            var profile = ground.get().profile();
            return ground.get().file() + ": " + reader.number(profile.lengthM() / 1000, 1) + " km, "
                    + reader.number(profile.ascentM(), 0) + " m up" + wind + "\n";
        }
        String km = asks.stream()
                .findFirst()
                .flatMap(ask -> ask.parameters().get("ride-length"))
                .orElse("0");
        return "hills of each group's terrain: " + reader.exact(Double.parseDouble(km)) + " km" + wind + "\n";
    }

    private static String[] row(Ask ask, RideSums ride, Reader reader) {
        return new String[] {
            ask.subject().get(Scope.CONCEPT).orElseThrow().text(),
            ask.subject().get(Scope.RIDERS).orElseThrow().text(),
            reader.number(ride.averageKmh(), 1),
            reader.number(ride.comfortPct(), 0),
            reader.number(ride.shiftsPerHour(), 0),
            reader.number(ride.cogsPerHour(), 0),
            reader.number(ride.frontShiftsPerHour(), 0),
            reader.number(ride.walkingPct(), 1),
            reader.number(ride.grindingPct(), 1),
            reader.number(ride.workKj(), 0)
        };
    }
}
