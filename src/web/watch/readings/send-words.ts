/** What is typed at a terminal to send one temperature. */
export const curlLine = (address: string, token: string): string =>
  `curl -X POST ${address}/api/readings -H "Authorization: Bearer ${token}" -H "Content-Type: application/json" -d '{"tempC": 1222}'`;

/** The topic on which a logger of this name is heard, as `wareboard serve --mqtt` listens unless told otherwise. */
export const mqttTopic = (name: string): string => `studio/kiln/${name}`;

/** Whether a name fits one level of a topic (MQTT 5.0, 4.7: no level holds these). */
export const fitsTopic = (name: string): boolean => name !== "" && !/[+#/]/.test(name);
