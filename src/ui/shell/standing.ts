import { say } from "../../core/say.ts";

/** Whose word comes before this workbook's. */
export const standing = say.safety`A planning aid, not a validated process. Your national protocol, the maker's instructions and qualified staff's judgement come first.`;
