package groupwright.definition.assessment;

import groupwright.definition.figure.Verdict;
import groupwright.definition.record.RecordId;
import java.util.Optional;

/**
 * How a requirement stands for a concept.
 *
 * @param requirement which
 * @param concept for which concept
 * @param verdict the worst verdict over criteria, rider groups and bikes
 * @param rung the highest rung reached; nothing for a parked or retired requirement
 */
public record RequirementStanding(RecordId requirement, RecordId concept, Verdict verdict, Optional<Rung> rung) {}
