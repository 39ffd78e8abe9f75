import { say } from "../../../core/say.ts";

/** What can harm a baby where it is decided which kit is ready. */
export const readinessCautions: readonly string[] = [
	say.safety`When in doubt do not use. Test every kit again before each birth.`,
	say.safety`A kit with a piece missing, a failed test or a doubtful date is set apart and marked at once.`,
	say.safety`Single-use parts are thrown away as the maker says.`,
];
