import { createServer } from "node:http";
import type { AddressInfo } from "node:net";

/** A place that nothing may ask for: it notes every request and answers none. */
export interface Elsewhere {
	readonly address: string;
	readonly asked: readonly string[];
	close(): void;
}

/** Stands for every other host, as a server and as a proxy for all names that are not this machine. */
export async function elsewhere(): Promise<Elsewhere> {
	const asked: string[] = [];
	const server = createServer((request, response) => {
		asked.push(`${request.method} ${request.url}`);
		response.writeHead(404).end();
	});
	server.on("connect", (request, socket) => {
		asked.push(`CONNECT ${request.url}`);
		socket.end();
	});
	server.on("upgrade", (request, socket) => {
		asked.push(`UPGRADE ${request.url}`);
		socket.end();
	});
	await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
	const { port } = server.address() as AddressInfo;
	const close = () => {
		server.close();
		server.closeAllConnections();
	};
	return { address: `http://127.0.0.1:${port}`, asked, close };
}
