package trestle.http;

import io.javalin.http.Context;

/** What every route reads single requests by: how large they may be, and the room that they share. */
final class Bodies {
    private final long mostBytes;
    private final Room room;

    Bodies(long mostBytes, Room room) {
        this.mostBytes = mostBytes;
        this.room = room;
    }

    /** Room for the body of a request, before it is read. */
    Room.Taken room(Context context) {
        return room.forRequest(WholeBody.announced(context, mostBytes));
    }

    /** Room for a request that is a query. */
    Room.Taken roomForQuery(Context context) {
        String query = context.queryString();
        return room.forRequest(query == null ? 0 : query.length());
    }

    /** The body, to its end. */
    byte[] read(Context context) {
        return WholeBody.of(context, mostBytes);
    }
}
