// @ts-check

/** How long a lost desk is waited for before the next try, ms. */
const WAITS = [250, 500, 1000, 2000, 5000];

/**
 * The line to the desk: what is asked gets a number that rises, and what is told is handed on. A line that is lost is taken
 * up again.
 * @typedef {{ ask(what: string, more?: object): number, close(): void }} Line
 */

/**
 * @param {string} address
 * @param {{ open(): void, lost(reason: string): void, told(message: any): void }} listener
 * @returns {Line}
 */
export function createLine(address, listener) {
  let number = 0, tries = 0, isClosed = false;
  /** @type {WebSocket} */
  let socket;

  function connect() {
    socket = new WebSocket(address);
    // Numbers count anew on every line.
    number = 0;
    socket.addEventListener('open', () => {
      tries = 0;
      listener.open();
    });
    socket.addEventListener('message', (event) => listener.told(JSON.parse(event.data)));
    socket.addEventListener('close', (event) => {
      if (!isClosed) {
        listener.lost(event.reason);
        setTimeout(connect, WAITS[Math.min(tries++, WAITS.length - 1)]);
      }
    });
  }

  connect();
  return {
    ask(what, more) {
      if (socket.readyState !== WebSocket.OPEN) {
        return 0;
      }

      number++;
      socket.send(JSON.stringify({ ask: what, ...(what === 'cancel' ? {} : { number }), ...more }));
      return number;
    },
    close() {
      isClosed = true;
      socket.close();
    },
  };
}
