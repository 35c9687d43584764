/** Listens to a stream of server-sent events, giving each one's JSON, until it ends or `enough` says so. */
export async function listen<Event>(
  address: string,
  enough: (event: Event) => boolean = () => false,
): Promise<readonly Event[]> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address} answered ${answer.status}: ${await answer.text()}`);
  const heard: Event[] = [];
  const decoder = new TextDecoder();
  let text = "";
  for await (const part of answer.body as unknown as AsyncIterable<Uint8Array>) {
    text += decoder.decode(part, { stream: true });
    const events = text.split("\n\n");
    text = events.pop() as string;
    for (const each of events) {
      const data = /^data: (.*)$/m.exec(each)?.[1];
      if (data === undefined) continue;
      heard.push(JSON.parse(data) as Event);
      if (enough(heard.at(-1) as Event)) return heard;
    }
  }
  return heard;
}
