package trestle.http;

/**
 * How the service runs.
 *
 * @param host address to listen on
 * @param port port to listen on; 0 takes a free one
 * @param maxBodyBytes largest request body
 * @param maxBatchBytes largest batch of requests, each of which may be as large as a body
 * @param maxBatchSeconds longest time that one batch is worked on
 * @param maxConcurrentRequests requests worked on at once; more wait a moment and are then refused
 * @param admission who is answered
 */
public record Settings(
        String host,
        int port,
        long maxBodyBytes,
        long maxBatchBytes,
        int maxBatchSeconds,
        int maxConcurrentRequests,
        Admission admission) {

    /**
     * The defaults on a free local port, for tests.
     *
     * @return the settings
     */
    public static Settings onAFreePort() {
        return new Settings("127.0.0.1", 0, 1 << 20, 1 << 30, 600, 64, Admission.ofAnyone());
    }

    /**
     * The same for others.
     *
     * @param others who is answered
     * @return the settings
     */
    public Settings admitting(Admission others) {
        return new Settings(host, port, maxBodyBytes, maxBatchBytes, maxBatchSeconds, maxConcurrentRequests, others);
    }
}
