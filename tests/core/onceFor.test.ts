import { expect, test } from "vitest";
import { onceFor } from "../../src/core/onceFor.ts";

test("work is done once for each object, also where it gives nothing", () => {
	const asked: object[] = [];
	const work = onceFor((of: { readonly n: number }) => {
		asked.push(of);
		return of.n === 0 ? undefined : { n: of.n };
	});
	const [none, one, likeOne] = [{ n: 0 }, { n: 1 }, { n: 1 }];
	expect([work(none), work(none)]).toEqual([undefined, undefined]);
	expect(work(one)).toBe(work(one));
	expect(work(likeOne)).not.toBe(work(one));
	expect(asked).toEqual([none, one, likeOne]);
});
