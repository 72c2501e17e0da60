/** One step of a journey: a failure in it begins with what was to be done. */
export async function step<T>(title: string, run: () => Promise<T>): Promise<T> {
  try {
    return await run();
  } catch (error) {
    if (error instanceof Error) error.message = `${title}: ${error.message}`;
    throw error;
  }
}
