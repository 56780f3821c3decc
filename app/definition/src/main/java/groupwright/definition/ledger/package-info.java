/** The ledger of answers: asks figures, remembers what each answer read, asks again only what an edit touched. */
package groupwright.definition.ledger;
