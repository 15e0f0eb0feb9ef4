package trestle.http;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Breaks a connection that holds a batch for longer than it may. The server's own idle time does
 * not see a client that sends or takes a byte now and then.
 */
final class Cutoff {
    private final Scheduler.Task task;

    Cutoff(Context context, Duration after) {
        Request request = ServletContextRequest.getServletContextRequest(context.req());
        EndPoint connection = request.getConnectionMetaData().getConnection().getEndPoint();
        task = request.getComponents()
                .getScheduler()
                .schedule(
                        () -> connection.close(new TimeoutException("batch")), after.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Leaves the connection whole: the batch ended in time. */
    void cancel() {
        task.cancel();
    }
}
