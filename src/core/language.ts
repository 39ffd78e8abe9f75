export type Language = "en" | "fr";

/** Language of this build: the build for another one puts its own code here. */
export const language = "en" as Language;

/** Between whole and part of a number that is shown; files always have a point. */
export const decimalSign = language === "fr" ? "," : ".";
