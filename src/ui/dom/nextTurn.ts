/**
 * Lets the page paint and answer a key: what comes after goes on in a turn of its own. A
 * message and no timer, because browsers hold timers back: one that follows another for some
 * milliseconds, those of a page behind another one for a second or more.
 */
export function nextTurn(): Promise<void> {
	return new Promise((resume) => {
		const { port1, port2 } = new MessageChannel();
		port1.onmessage = () => {
			port1.close();
			resume();
		};
		port2.postMessage(undefined);
	});
}
