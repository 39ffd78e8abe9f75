import { expect, test } from "vitest";
import { broken } from "./broken.ts";

test("words that people read are left alone, those of safety as all others", async () => {
	const content = "say`Boil it.`; say.safety`No soap.`; keys.safety`soap`; tell`soap`;";
	const { mutants } = await broken([{ name: "words.ts", mutate: true, content }]);
	const changed = mutants
		.filter(({ status }) => status !== "Ignored")
		.map(({ location: { start, end } }) => content.slice(start.column, end.column));
	expect(changed).toEqual(["`soap`", "`soap`"]);
});
