/** A bold letter of a picture's label is about so wide, in px: what is measured by it fits in most fonts. */
export const LETTER_PX = 8;
