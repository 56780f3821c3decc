/** What is wrong with somebody's input, said in one sentence that tells where, what and what to do. */
package groupwright.definition.problem;
