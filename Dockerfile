# Trestle in a container: one jar on a Java runtime, started from an archive of its loaded classes.
#
#   docker build -t trestle .
#   docker run --rm -p 127.0.0.1:8080:8080 --read-only --tmpfs /tmp --memory 256m trestle
#
# Options are environment variables (TRESTLE_PORT, TRESTLE_ALLOWED_ORIGINS …; `docker run trestle
# --help` lists them). Further options for Java go into JDK_JAVA_OPTIONS: -XX:TieredStopAtLevel=1 makes
# the first answers come sooner.

FROM maven:3.9-eclipse-temurin-17 AS build
WORKDIR /build
COPY . .
# The tests need more than the sources of the jar and are run before an image is made.
RUN mvn -B -ntp -pl service -am package -Dmaven.test.skip=true

FROM eclipse-temurin:17-jre
LABEL org.opencontainers.image.title="Trestle" \
      org.opencontainers.image.description="Airframe calculations for large battery-electric aircraft, over HTTP" \
      org.opencontainers.image.licenses="Apache-2.0"
WORKDIR /opt/trestle
COPY --from=build /build/LICENSE /build/service/NOTICE /build/service/target/trestle.jar ./

# Half of the memory limit for the heap: the rest is code, classes, threads and buffers. A service
# that is out of memory ends and is started anew. No performance data: a read-only root has no
# place for them.
RUN printf '%s\n' -XX:+UseSerialGC -XX:MaxRAMPercentage=50 -XX:+ExitOnOutOfMemoryError \
        -XX:-UsePerfData > jvm.options

# The archive (AppCDS) holds the classes that are loaded when every calculation has answered its own
# example. It fits this runtime and this jar alone, so it is made here; Java leaves it aside where
# it does not fit, and then only starts more slowly.
RUN java @jvm.options -XX:ArchiveClassesAtExit=trestle.jsa -jar trestle.jar --check --port 0 \
    && java -Xshare:on -XX:SharedArchiveFile=trestle.jsa -jar trestle.jar --version

ENV TRESTLE_HOST=0.0.0.0
EXPOSE 8080
USER 10001:10001
# bash opens TCP connections by itself: no further tool is needed.
HEALTHCHECK --interval=30s --timeout=3s --start-period=10s \
    CMD ["/bin/bash", "-c", "exec 3<>/dev/tcp/127.0.0.1/${TRESTLE_PORT:-8080} && printf 'GET /health/ready HTTP/1.0\\r\\n\\r\\n' >&3 && read -r status <&3 && [[ $status == *' 200 '* ]]"]
ENTRYPOINT ["java", "@/opt/trestle/jvm.options", "-XX:SharedArchiveFile=/opt/trestle/trestle.jsa", "-jar", "/opt/trestle/trestle.jar"]
