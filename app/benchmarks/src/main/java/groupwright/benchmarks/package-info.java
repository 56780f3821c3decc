/** How fast and how small the program is where that matters; run with {@code mvn -q -Pbenchmarks -Dbench=Ledger}. */
package groupwright.benchmarks;
