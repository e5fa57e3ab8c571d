using System.Net;

namespace Seedfall.Web.Tests.Photos;

/// <summary>A lawn to photograph, on September 25, 2026.</summary>
internal static class PhotoSteps
{
    internal static App Started() => new(clock: new StandingClock(new DateTimeOffset(2026, 9, 25, 18, 0, 0, TimeSpan.Zero)));

    /// <summary>A lawn with one photo spot; its address.</summary>
    internal static async Task<string> Spot(this App app, string kind, bool weather = false)
    {
        var lawn = await app.TakeOn();
        if (weather)
        {
            await app.Post(lawn + "/weather", [("weather", "1")]);
            await app.Post(lawn + "/season", [("season", "2026"), ("seedDown", "2026-09-01"), ("method", "broadcast"), ("share", "")], lawn);
        }

        var answer = await app.Post(lawn + "/photos/new", [("spotname", "Front walk"), ("kind", kind), ("spotpatch", "front"), ("stand", "On the slab")]);
        Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
        return answer.Location!;
    }

    /// <summary>Sends a picture and returns its page.</summary>
    internal static async Task<string> Kept(this App app, string spot, byte[] picture, string taken = "")
    {
        var answer = await app.Upload(spot, [("picture.jpg", picture)], [("taken", taken)], field: "photo");
        Assert.True(answer.Status == HttpStatusCode.Found, App.Words(answer.Body));
        return answer.Location!;
    }

    private sealed class StandingClock(DateTimeOffset now) : TimeProvider
    {
        public override DateTimeOffset GetUtcNow() => now;
    }
}
