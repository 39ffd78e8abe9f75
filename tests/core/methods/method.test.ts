import { expect, test } from "vitest";
import { isLoadMethod, loadMethods, methods } from "../../../src/core/methods/method.ts";

test("a round does chlorine, boiling and steam itself, load by load; what is sent away or thrown away it does not", () => {
	expect(methods.filter(isLoadMethod)).toEqual([...loadMethods]);
});
