/** Lets the page paint and answer a key: what comes after goes on in a turn of its own. */
export function nextTurn(): Promise<void> {
	return new Promise((resume) => setTimeout(resume));
}
