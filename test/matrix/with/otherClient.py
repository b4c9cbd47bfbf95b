# test/matrix/with/otherClient.py: a member whose client is not made by the bot's SDK (matrix-nio): asks one question, prints what it can read.
# Started by otherClient.ts with one JSON object; prints one JSON object a line: {"kind": "sent" | "seen" | "closed", ...}.
import asyncio, json, sys, tempfile
from nio import AsyncClient, AsyncClientConfig, MegolmEvent, RoomMessage


def say(kind, **more):
    print(json.dumps({"kind": kind, **more}), flush=True)


async def main(told):
    config = AsyncClientConfig(encryption_enabled=True)
    client = AsyncClient(told["url"], told["user"], store_path=tempfile.mkdtemp(), config=config)
    client.restore_login(told["user"], told["device"], told["token"])
    if client.should_upload_keys:
        await client.keys_upload()
    await client.join(told["room"])
    await client.sync(timeout=3000, full_state=True)
    say("ready")

    async def on_message(room, event):
        if event.sender != told["user"]:
            source = event.source["content"]
            say("seen", id=event.event_id, sender=event.sender, decrypted=event.decrypted, content=source)

    async def on_closed(room, event):
        say("closed", id=event.event_id, sender=event.sender)

    client.add_event_callback(on_message, RoomMessage)
    client.add_event_callback(on_closed, MegolmEvent)
    await asyncio.get_running_loop().run_in_executor(None, sys.stdin.readline)  # until told that the bot is there
    await client.sync(timeout=1000, full_state=True)
    content = {"msgtype": "m.text", "body": told["question"]}
    sent = await client.room_send(told["room"], "m.room.message", content, ignore_unverified_devices=True)
    say("sent", id=getattr(sent, "event_id", None), encrypted=client.rooms[told["room"]].encrypted)
    await client.sync_forever(timeout=3000)


asyncio.run(main(json.loads(sys.argv[1])))
