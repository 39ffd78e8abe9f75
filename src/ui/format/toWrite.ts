/** Room to write a short figure by hand, within a line of text. */
export const TO_WRITE = "____";
