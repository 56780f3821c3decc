package groupwright.definition.figure;

/**
 * What a figure gives: a quantity, quantities with positions, a verdict, a word, or which input is missing. Two answers
 * are equal when value bits, unit and missing inputs are; then nothing behind them is asked again.
 */
public sealed interface Answer permits Quantity, Series, Verdict, Word, Missing {}
