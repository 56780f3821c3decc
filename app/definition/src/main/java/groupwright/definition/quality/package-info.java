/**
 * Advice on how a requirement is worded: words and sentence patterns that make it hard to verify.
 *
 * <p>Sources. Word classes: ISO/IEC/IEEE 29148:2018, 5.2.7 (from memory; the examples of the standard are marked
 * {@code iso} in the word lists). Further vague and escape words: INCOSE Guide for Writing Requirements, rules 7 and 8
 * (secondary source, marked {@code incose}; those we only remember are marked {@code memory}). Sentence patterns: EARS,
 * Mavin, Wilkinson, Harwood and Novak, "Easy Approach to Requirements Syntax", RE'09, 2009. Every word marked
 * {@code ours}, the limits of look-ahead and the texts of advice are our own.
 *
 * <p>Word lists and texts are resource files, one folder a language and one file a check; another language is another
 * folder, with its own {@code grammar.txt}.
 */
package groupwright.definition.quality;
