/** The figures of gearing, shifting, capacity, riding, weight, cost and tests: each reads its inputs and calls the calculus. */
package groupwright.definition.figures;
