/** Takes keys without dropping the focus, which the library does unless told not to. */
export function listenQuietly(hot: object): void {
	(hot as { listen(dropFocus: boolean): void }).listen(false);
}
