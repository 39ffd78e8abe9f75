/** A file that is not as this program writes one, so that no part of it can be understood without the whole. */
export class NotPlain extends Error {}
