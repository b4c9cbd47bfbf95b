# Dockerfile: the bot in a container: built in one stage, run in another, by nobody with rights, its state on one volume.
FROM node:24-slim AS build
WORKDIR /app
COPY package.json package-lock.json ./
COPY grammar grammar
# Without the tools of development, and without the Node that npm brings: the image has its own.
RUN npm ci --omit=dev --ignore-scripts --no-audit --no-fund \
    && npx nearleyc grammar/message.ne --out grammar/message.js \
    && rm -rf node_modules/node node_modules/node-bin-* node_modules/.bin/node
COPY bot bot
COPY core core
# Compiled once here instead of at every start; with the flags of the start, since code compiled with others does not count.
ENV NODE_COMPILE_CACHE=/app/.compiled
RUN node bot/start.js ask.ts --picture /tmp/warm.png "Rhode Island Red cock over Light Sussex hens" \
    && node bot/start.js transports/matrix.ts

FROM node:24-slim
ENV NODE_ENV=production NODE_COMPILE_CACHE=/app/.compiled HENWIFE_STATE=/data
WORKDIR /app
COPY --from=build /app /app
RUN install --directory --owner=node --group=node --mode=700 /data
USER node
VOLUME /data
# Ready when it has heard from its homeserver within three minutes.
HEALTHCHECK --interval=30s --timeout=5s --start-period=60s CMD ["node", "--eval", "fetch(`http://127.0.0.1:${process.env.HENWIFE_HEALTH_PORT ?? 9464}/ready`).then((answer) => process.exit(answer.ok ? 0 : 1), () => process.exit(1))"]
# Node itself is process 1, so it hears SIGTERM and ends in order: give it more than ten seconds for that.
STOPSIGNAL SIGTERM
CMD ["node", "bot/start.js", "main.ts"]
