package trestle.endpoint;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of the service, as the build stamped it. */
public final class Version {
    private static final String CURRENT = read();

    private Version() {}

    /**
     * The version.
     *
     * @return for example {@code 0.2.0}
     */
    public static String current() {
        return CURRENT;
    }

    private static String read() {
        try (InputStream stamp = Version.class.getResourceAsStream("/trestle/version.properties")) {
            Properties properties = new Properties();
            properties.load(stamp);
            return properties.getProperty("version");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
