using Microsoft.Playwright;

namespace Seedfall.Browser.Tests;

/// <summary>A lawn drawn by finger, by mouse and by keyboard alone.</summary>
public sealed class DrawingTests(RunningApp app)
{
    /// <summary>20 m x 12 m with a corner cut off: 240 - 4 x 4 / 2 = 232 m2.</summary>
    private static readonly (double, double)[] Lawn = [(-10, -6), (10, -6), (10, 2), (6, 6), (-10, 6)];

    private const double LawnSquareFeet = 232.0 / 0.09290304;

    [Theory]
    [InlineData("phone", true)]
    [InlineData("desk", false)]
    public async Task A_lawn_with_a_bed_and_a_pond_is_drawn_saved_and_found_again(string size, bool touch)
    {
        await using var window = await Window.Open(app, size, touch: touch);
        var sheet = new DrawnSheet(window, touch);
        await sheet.Open($"Cedar Row {size}");
        await window.Picture("draw-blank");
        await window.NothingBars();

        await sheet.Tap(Lawn);
        Assert.InRange(await sheet.Grass("Edge of the lawn"), 0.97 * LawnSquareFeet, 1.03 * LawnSquareFeet);
        await sheet.Hole("Bed");
        await sheet.Tap((-4, -2), (0, -2), (0, 2), (-4, 2));
        await sheet.Hole("Water");
        await sheet.Tap((3, -4), (7, -4), (5, -1));
        await sheet.Choose("edge");
        await sheet.Press("Front is the whole lawn");

        // 4 x 4 = 16 m2 of bed and 4 x 3 / 2 = 6 m2 of pond
        var grass = await sheet.Grass("Front");
        Assert.InRange(grass, 0.96 * (LawnSquareFeet - 22.0 / 0.09290304), 1.04 * (LawnSquareFeet - 22.0 / 0.09290304));
        await Assertions.Expect(sheet.Page.Locator("#draw-voice")).ToContainTextAsync("give or take");
        await window.Picture("draw-drawn");
        await window.NothingBars();

        var live = (await sheet.Row("Front").InnerTextAsync(), await sheet.Row("Bed").InnerTextAsync(), await sheet.Row("Edge").InnerTextAsync());
        await sheet.Save();
        Assert.Equal(live, (await sheet.Row("Front").InnerTextAsync(), await sheet.Row("Bed").InnerTextAsync(), await sheet.Row("Edge").InnerTextAsync()));
        Assert.Equal(live.Item1, await ServerRow(window, sheet.Page.Url, "Front"));
        window.NoFaults();
    }

    [Theory]
    [InlineData("phone")]
    [InlineData("desk")]
    public async Task The_keyboard_alone_draws_moves_inserts_deletes_and_takes_back(string size)
    {
        await using var window = await Window.Open(app, size);
        var sheet = new DrawnSheet(window, touch: false);
        await sheet.Open($"Key Lane {size}");
        await sheet.Box.FocusAsync();
        await sheet.Keys("Enter", "Shift+ArrowRight", "Shift+ArrowRight", "Enter", "Shift+ArrowUp", "Enter", "Shift+ArrowLeft", "Shift+ArrowLeft", "Enter");

        // Steps of ten feet: 20 ft x 10 ft.
        await Assertions.Expect(sheet.Row("Edge of the lawn")).ToContainTextAsync("200 sq ft");
        await Assertions.Expect(sheet.Page.Locator("#draw-voice")).ToContainTextAsync("4 corners, 60 ft (18.3 m) round it. Corner 4.");
        await window.Picture("draw-keys");
        await sheet.Keys("m", "ArrowUp", "ArrowUp");
        await Assertions.Expect(sheet.Row("Edge of the lawn")).ToContainTextAsync("220 sq ft");
        await sheet.Keys("Insert");
        Assert.Equal(5, await sheet.Corners());
        await sheet.Keys("PageUp", "Delete");
        Assert.Equal(4, await sheet.Corners());
        await sheet.Keys("Control+z", "Control+z", "Control+z", "Control+z");
        await Assertions.Expect(sheet.Row("Edge of the lawn")).ToContainTextAsync("200 sq ft");
        await sheet.Keys("Control+y", "Control+y");
        await Assertions.Expect(sheet.Row("Edge of the lawn")).ToContainTextAsync("220 sq ft");

        await sheet.Page.GetByLabel("Corner 1, feet east").FillAsync("-10");
        await sheet.Keys("Enter");
        await sheet.Page.GetByLabel("How the new corner is given").SelectOptionAsync("way");
        await sheet.Page.GetByLabel("Distance, ft").FillAsync("5");
        await sheet.Page.GetByLabel("Bearing, ° from north").FillAsync("180");
        await sheet.Keys("Enter");
        Assert.Equal(5, await sheet.Corners());
        await sheet.Page.GetByRole(AriaRole.Button, new() { Name = "Save the drawing" }).FocusAsync();
        await sheet.Keys("Enter");
        await Assertions.Expect(sheet.Page.GetByText("Saved. The plan counts with these areas.")).ToBeVisibleAsync();
        window.NoFaults();
    }

    [Fact]
    public async Task A_corner_is_dragged_a_side_bent_and_both_taken_back()
    {
        await using var window = await Window.Open(app, "desk");
        var sheet = new DrawnSheet(window, touch: false);
        await sheet.Open("Drag Corner");
        await sheet.Tap((-8, -5), (8, -5), (8, 5), (-8, 5));
        var before = await sheet.Grass("Edge of the lawn");
        await sheet.Press("Move corners");
        await sheet.Drag((8, 5), (10, 5));
        var dragged = await sheet.Grass("Edge of the lawn");

        // A triangle of 2 m x 10 m / 2 more.
        Assert.InRange(dragged - before, 0.85 * 10.0 / 0.0929, 1.15 * 10.0 / 0.0929);
        await sheet.Drag((0, -5), (0, -7));
        Assert.Equal(5, await sheet.Corners());
        Assert.InRange(await sheet.Grass("Edge of the lawn") - dragged, 0.85 * 16.0 / 0.0929, 1.15 * 16.0 / 0.0929);
        await sheet.Press("Undo");
        await sheet.Press("Undo");
        Assert.Equal(before, await sheet.Grass("Edge of the lawn"));
        Assert.Equal(4, await sheet.Corners());
        await sheet.Press("Redo");
        Assert.Equal(dragged, await sheet.Grass("Edge of the lawn"));
        window.NoFaults();
    }

    [Theory]
    [InlineData("phone", true)]
    [InlineData("desk", false)]
    public async Task What_crosses_is_shown_where_it_is_and_the_server_says_the_same(string size, bool touch)
    {
        await using var window = await Window.Open(app, size, touch: touch);
        var sheet = new DrawnSheet(window, touch);
        await sheet.Open($"Bow Tie {size}");
        await sheet.Tap((-8, 1), (8, 7), (8, 1), (-8, 7));
        await sheet.Choose("patch-front");
        await sheet.Tap((-8, -2), (0, -2), (0, -8));
        await sheet.Hole("House");
        await sheet.Tap((-4, -4), (4, -4), (4, -8), (-4, -8));
        var said = await sheet.Page.Locator("#draw-problems li").AllInnerTextsAsync();
        Assert.Equal(2, said.Count);
        Assert.StartsWith("Edge of the lawn: side 1 crosses or touches side 3 at", said[0], StringComparison.Ordinal);
        Assert.StartsWith("House lies only partly in Front: it crosses the edge at", said[1], StringComparison.Ordinal);
        await sheet.Box.ScrollIntoViewIfNeededAsync();
        await window.Picture("draw-crossing");
        await window.NothingBars();
        await sheet.Press("Save the drawing");
        var refused = await sheet.Page.Locator("#refused li").AllInnerTextsAsync();
        Assert.Equal(said.Select(s => s.Replace(" Show it", "", StringComparison.Ordinal).Trim()), refused.Select(r => r.Trim()));
        await window.NothingBars();

        // Nothing drawn is lost, and putting it right saves it.
        Assert.Equal(4, await sheet.Page.Locator("#draw-table tbody tr").CountAsync() + 1);
        await sheet.Choose("edge");
        await sheet.Press("Rub out the edge");
        await sheet.Choose("hole-1");
        await sheet.Press("Take House off the sheet");
        await sheet.Save();
        window.NoFaults();
    }

    [Fact]
    public async Task A_draft_outlives_the_page_until_it_is_saved()
    {
        await using var window = await Window.Open(app, "phone", touch: true);
        var sheet = new DrawnSheet(window, touch: true);
        await sheet.Open("Draft Court");
        await sheet.Tap(Lawn);
        var drawn = await sheet.Grass("Edge of the lawn");
        await sheet.Page.ReloadAsync();
        await Assertions.Expect(sheet.Page.GetByText("and did not save is back.")).ToBeVisibleAsync();
        Assert.Equal(drawn, await sheet.Grass("Edge of the lawn"));
        await sheet.Save();
        await sheet.Page.ReloadAsync();
        await Assertions.Expect(sheet.Page.GetByText("and did not save is back.")).ToHaveCountAsync(0);
        Assert.Equal(drawn, await sheet.Grass("Edge of the lawn"));
        window.NoFaults();
    }

    [Fact]
    public async Task Two_windows_that_drew_are_told()
    {
        await using var window = await Window.Open(app, "desk");
        var sheet = new DrawnSheet(window, touch: false);
        var lawn = await sheet.Open("Two Windows");
        await using var second = await Window.Open(app, "desk");
        var other = new DrawnSheet(second, touch: false);
        await second.Go(new Uri(lawn).AbsolutePath + "/draw");
        await other.Tap((-5, -5), (5, -5), (5, 5));
        await other.Save();
        await sheet.Tap(Lawn);
        await sheet.Press("Save the drawing");
        await Assertions.Expect(sheet.Page.GetByText("This drawing was changed meanwhile")).ToBeVisibleAsync();
        await window.NothingBars();
        Assert.Equal(5, await sheet.Corners());
        await sheet.Save();
        Assert.Equal(5, await sheet.Corners());
        window.NoFaults();
        second.NoFaults();
    }

    /// <summary>A row as the server writes it, without script.</summary>
    private static async Task<string> ServerRow(Window window, string url, string shape)
    {
        var html = await (await window.Page.Context.APIRequest.GetAsync(url)).TextAsync();
        return await window.Page.EvaluateAsync<string>(
            """
            ([html, shape]) => {
              const row = [...new DOMParser().parseFromString(html, 'text/html').querySelectorAll('#draw-table tbody tr')].find(r => r.cells[0].textContent.trim() === shape);
              return [...row.cells].map(c => c.textContent.trim()).join('\t');
            }
            """,
            new[] { html, shape });
    }
}
