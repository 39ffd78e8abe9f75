/** Like deepEqual on plain data, but quick also where large things differ. */
export function expectSame(actual: unknown, expected: unknown, what: string): void {
	const [found, wanted] = [JSON.stringify(actual), JSON.stringify(expected)];
	if (found === wanted) return;
	let at = 0;
	while (found?.[at] === wanted?.[at]) at++;
	const around = (text = "") => text.slice(Math.max(0, at - 30), at + 30);
	throw new Error(`${what}\n${around(found)}\ninstead of\n${around(wanted)}`);
}
