using System.Text.Json;
using Microsoft.Playwright;
using Seedfall.Web.Tests.Photos;

namespace Seedfall.Browser.Tests;

/// <summary>A phone whose storage is full: what finds no room is said to be not kept, stays in hand, and arrives once when there is room.</summary>
[Collection(nameof(DayApp))]
public sealed class FullPhoneTests(DayApp day)
{
    private static readonly FilePayload Picture = new() { Name = "from-the-camera.jpg", MimeType = "image/jpeg", Buffer = ComposedPhoto.Quadrat(0.4) };

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task An_entry_that_finds_no_room_stays_in_its_form_and_arrives_once_when_there_is(bool signal)
    {
        var words = $"no room, {(signal ? "with" : "without")} a signal";
        await using var phone = await Phone.Open(day.App);
        await phone.Sheet(DayApp.Quarry + "/day/2026-08-14");
        await phone.Fills();
        await phone.Signal(signal);
        await phone.Page.EvaluateAsync("location.hash = 'written'");
        var form = phone.Page.Locator("form[data-record='free.note']");
        var (text, problem) = (form.Locator("input[name=text]"), form.Locator(".problem"));
        await text.FillAsync(words);
        await Assertions.Expect(problem).ToContainTextAsync("what you type here is lost when this page closes");
        await form.Locator("button.go").ClickAsync();
        await Assertions.Expect(problem).ToContainTextAsync("The phone's storage is full: this is not kept, nor sent.");
        await Assertions.Expect(problem).ToBeVisibleAsync();
        await Assertions.Expect(text).ToHaveValueAsync(words);
        await Assertions.Expect(form.Locator(".mine li")).ToHaveCountAsync(0);
        await Assertions.Expect(phone.Sign).ToContainTextAsync("Storage full");
        await phone.Look($"full-entry-{(signal ? "signal" : "none")}");

        // Again, and still no room: no second one comes of it.
        await form.Locator("button.go").ClickAsync();
        await Assertions.Expect(form).Not.ToHaveAttributeAsync("data-busy", "");
        await Assertions.Expect(problem).ToBeVisibleAsync();
        Assert.Empty(await Noted(words));

        await phone.Room(null);
        await form.Locator("button.go").ClickAsync();
        await Assertions.Expect(form.Locator(".mine li").First).ToContainTextAsync(signal ? ": sent" : "waiting to send");
        await Assertions.Expect(problem).ToBeHiddenAsync();
        await Assertions.Expect(phone.Sign).Not.ToContainTextAsync("Storage full");
        await phone.Signal(there: true);
        await Assertions.Expect(phone.Sign).ToContainTextAsync("All sent");
        Assert.Single(await Noted(words));
    }

    [Fact]
    public async Task A_picture_that_finds_no_room_is_held_in_hand_and_arrives_once_when_there_is()
    {
        await using var phone = await Phone.Open(day.App);
        var before = await day.Pictures();
        await phone.Sheet(DayApp.Mill + "/day/2026-08-14");
        await phone.Fills();
        var section = phone.Page.Locator("section[data-step]", new() { Has = phone.Page.Locator($"input[data-spot='{day.Spot}']") }).First;
        await section.EvaluateAsync("s => location.hash = s.id");
        await section.Locator("input[data-spot]").First.SetInputFilesAsync(Picture);
        var unkept = section.Locator(".unkept");
        await Assertions.Expect(unkept.Locator(".problem")).ToContainTextAsync("this picture is not kept, nor sent");
        await Assertions.Expect(unkept).ToContainTextAsync("It is lost when this page closes.");
        await Assertions.Expect(phone.Sign).Not.ToContainTextAsync("waiting to send");
        await unkept.ScrollIntoViewIfNeededAsync();
        await phone.Look("full-picture");
        var saved = await phone.Page.RunAndWaitForDownloadAsync(() => unkept.GetByRole(AriaRole.Button, new() { Name = "Save the picture" }).ClickAsync());
        Assert.EndsWith(".jpg", saved.SuggestedFilename, StringComparison.Ordinal);

        var again = unkept.GetByRole(AriaRole.Button, new() { Name = "Try to keep it again" });
        await again.ClickAsync();
        await Assertions.Expect(again).ToBeEnabledAsync();
        await Assertions.Expect(unkept).ToHaveCountAsync(1);
        Assert.Equal(before, await day.Pictures());

        await phone.Room(null);
        await again.ClickAsync();
        await Assertions.Expect(unkept).ToHaveCountAsync(0);
        await Assertions.Expect(section.Locator(".spot .mine").First).ToContainTextAsync(": sent");
        await Assertions.Expect(phone.Sign).ToContainTextAsync("All sent");
        Assert.Equal(before + 1, await day.Pictures());
    }

    /// <summary>What waited before the phone filled up must still leave it: sending is what makes room.</summary>
    [Fact]
    public async Task What_waits_is_delivered_from_a_full_phone_and_refusals_still_show()
    {
        await using var phone = await Phone.Open(day.App);
        await phone.Keep(DayApp.Mill + "/day/2026-08-14");
        var before = await day.Pictures();
        await phone.Signal(there: false);
        await phone.Page.EvaluateAsync("location.hash = 'written'");
        var form = phone.Page.Locator("form[data-record='free.note']");
        await form.Locator("input[name=text]").FillAsync("before it was full");
        await form.Locator("button.go").ClickAsync();
        await Assertions.Expect(form.Locator(".mine li").First).ToContainTextAsync("waiting to send");
        var watered = phone.Page.Locator("form[data-record^='water.first.watered']").First;
        await watered.EvaluateAsync("f => location.hash = f.closest('section').id");
        await watered.Locator("input[name=time]").FillAsync("9999");
        await watered.Locator("button.go").ClickAsync();
        var section = phone.Page.Locator("section[data-step]", new() { Has = phone.Page.Locator($"input[data-spot='{day.Spot}']") }).First;
        await section.EvaluateAsync("s => location.hash = s.id");
        await section.Locator("input[data-spot]").First.SetInputFilesAsync(Picture);
        await Assertions.Expect(phone.Sign).ToContainTextAsync("3 waiting to send");

        await phone.Fills();
        await phone.Signal(there: true);
        await Assertions.Expect(phone.Sign).ToContainTextAsync("1 refused: look");
        await Assertions.Expect(phone.Sign).Not.ToContainTextAsync("waiting");
        Assert.Single(await Noted("before it was full", DayApp.Mill));
        Assert.Equal(before + 1, await day.Pictures());
        await phone.Page.EvaluateAsync("location.hash = 'written'");
        await Assertions.Expect(form.Locator(".mine li").First).ToContainTextAsync(": sent");
        await phone.Page.EvaluateAsync("location.hash = 'waiting'");
        await Assertions.Expect(phone.Page.Locator("#queue .problem")).ToContainTextAsync("minutes from 0 to 1440");
        await Assertions.Expect(phone.Page.Locator("#no-room")).ToBeVisibleAsync();
        await phone.Look("full-waiting");

        // Pages open as they did, and so does the sheet.
        await phone.Page.GotoAsync(DayApp.Mill + "/tank");
        await Assertions.Expect(phone.Page.Locator("h1")).ToHaveTextAsync("Mix the tank");
        await phone.Sheet(DayApp.Mill + "/day/2026-08-14");
        Assert.Single(await Noted("before it was full", DayApp.Mill));
    }

    [Fact]
    public async Task A_lawn_that_cannot_be_kept_for_want_of_room_says_so()
    {
        await using var phone = await Phone.Open(day.App);
        await phone.Sheet(DayApp.Quarry + "/day/2026-08-14");
        await phone.Room(1);
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Keep on this phone" }).ClickAsync();
        await Assertions.Expect(phone.Page.Locator("#kept")).ToContainTextAsync("could not be kept");
        await phone.Room(null);
        await phone.Page.GetByRole(AriaRole.Button, new() { Name = "Keep on this phone" }).ClickAsync();
        await Assertions.Expect(phone.Page.Locator("#kept")).ToContainTextAsync("Kept on this phone");
    }

    private async Task<IReadOnlyList<JsonElement>> Noted(string words, string lawn = DayApp.Quarry) =>
        [.. (await day.Entries(lawn)).Where(e => e.ToString().Contains(words, StringComparison.Ordinal))];
}
