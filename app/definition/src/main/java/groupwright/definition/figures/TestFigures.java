package groupwright.definition.figures;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.TestResult;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What tests, inspections and demonstrations gave. */
public final class TestFigures implements FigureFamily {
    private static final Parameter QUANTITY =
            Parameter.word("quantity", "what was measured, as the results call it, for example lever-force");

    @Override
    public List<Figure> figures() {
        return List.of(Names.figure("test-result")
                .of(Scope.CONCEPT, Scope.REQUIREMENT)
                .in(Unit.AS_RECORDED)
                .with(QUANTITY)
                .formula(
                        "the requirement's latest result for this concept and quantity; results without a date count as"
                                + " older than all others, of equally old ones the last in the list counts")
                .source("the result's own record")
                .leavesOut("earlier results; sample size and confidence, which stand in the result")
                .resolution(0.000001)
                .example("test-result C-901 R-901 quantity=lever-force", "22.00")
                .computedBy(TestFigures::latest));
    }

    private static Answer latest(Inputs in) {
        RecordId concept = in.subject(Scope.CONCEPT);
        String quantity = in.word(QUANTITY.name());
        Optional<String> latest = Optional.empty();
        LocalDate newest = LocalDate.MIN;
        for (String id : in.items(requirement(in), Requirement.RESULTS)) {
            LocalDate date = of(in, id, TestResult.DATE).orElse(LocalDate.MIN);
            if (of(in, id, TestResult.CONCEPT).equals(concept)
                    && of(in, id, TestResult.QUANTITY).equals(quantity)
                    && !date.isBefore(newest)) {
                latest = Optional.of(id);
                newest = date;
            }
        }
        String found = latest.orElseThrow(() ->
                in.missing(requirement(in), Requirement.RESULTS, "record a result of " + quantity + " for " + concept));
        return Quantity.of(of(in, found, TestResult.VALUE).value(), new Unit(of(in, found, TestResult.UNIT)));
    }

    /** A field of a result that is in the list. */
    private static <T> T of(Inputs in, String result, Field<TestResult, T> field) {
        return in.item(requirement(in), Requirement.RESULTS, result, field).orElseThrow();
    }

    private static RecordId requirement(Inputs in) {
        return in.subject(Scope.REQUIREMENT);
    }
}
