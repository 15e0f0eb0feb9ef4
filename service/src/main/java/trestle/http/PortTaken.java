package trestle.http;

/** The address that the service should listen on is in use or cannot be had. */
public final class PortTaken extends RuntimeException {
    /**
     * States the address.
     *
     * @param host address
     * @param port port
     * @param cause what the server said
     */
    public PortTaken(String host, int port, Throwable cause) {
        super(
                "cannot listen on " + host + ":" + port + ": the port is taken or the address is not this machine's",
                cause);
    }
}
