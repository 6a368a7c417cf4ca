/** Id of the sentence that says what the picture shows, for those who do not see it. */
export const saidId = 'together-said';
