// Speaks with the desk. At the edge of reach an answer may never come: then it is given up, and tried again.

const GIVE_UP_ASKING_MS = 10000;
const GIVE_UP_SENDING_MS = 60000;

/** What the desk tells under a path. */
export async function ask(path) {
  return answer(await fetch(path, {
    headers: { Accept: 'application/json' }, cache: 'no-store', redirect: 'error', signal: AbortSignal.timeout(GIVE_UP_ASKING_MS),
  }));
}

/** Sends a message. Sending twice is harmless. */
export async function send(path, message) {
  return answer(await fetch(path, {
    method: 'POST', headers: { 'Content-Type': 'application/json', Accept: 'application/json' },
    body: JSON.stringify(message), cache: 'no-store', redirect: 'error', signal: AbortSignal.timeout(GIVE_UP_SENDING_MS),
  }));
}

async function answer(response) {
  if (response.ok && (response.headers.get('Content-Type') ?? '').startsWith('application/json')) return response.json();
  const fault = new Error('The desk answered ' + response.status);
  fault.desk = response.status === 401 || response.status === 403 ? 'notJoined' : 'away';
  throw fault;
}
