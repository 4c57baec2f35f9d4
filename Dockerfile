# Needs Docker alone:        docker build -t flangewright .
# From a jar built before:   docker build -t flangewright --build-arg JAR=target/flangewright-<version>.jar \
#                              --build-arg BUILD_IMAGE=<any small image> --build-arg BASE_IMAGE=<a Java 17 runtime> .
ARG BUILD_IMAGE=maven:3-eclipse-temurin-17
ARG BASE_IMAGE=eclipse-temurin:17-jre

FROM ${BUILD_IMAGE} AS build
ARG JAR=
WORKDIR /source
COPY . .
RUN if [ -n "$JAR" ]; then cp "$JAR" /flangewright.jar; \
    else mvn -B clean package -DskipTests && cp target/flangewright-*.jar /flangewright.jar; fi

FROM ${BASE_IMAGE}
RUN useradd --uid 10001 --no-create-home --home-dir /data --shell /usr/sbin/nologin flangewright \
    && mkdir /data && chown flangewright:flangewright /data
COPY --from=build /flangewright.jar /app/flangewright.jar
ENV FLANGEWRIGHT_DATA=/data SERVER_PORT=8080
WORKDIR /data
USER flangewright
VOLUME /data
EXPOSE 8080
STOPSIGNAL SIGTERM
# Bash speaks to the port itself, so that the image needs no HTTP client.
HEALTHCHECK --interval=10s --timeout=5s --start-period=120s --retries=6 \
  CMD ["bash", "-c", "exec 3<>/dev/tcp/127.0.0.1/$SERVER_PORT && printf 'GET %s/actuator/health HTTP/1.0\\r\\nHost: localhost\\r\\n\\r\\n' \"$SERVER_SERVLET_CONTEXT_PATH\" >&3 && grep -q '\"status\":\"UP\"' <&3"]
ENTRYPOINT ["java", "-XX:MaxRAMPercentage=75", "-jar", "/app/flangewright.jar"]
