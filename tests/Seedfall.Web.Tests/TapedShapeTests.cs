using System.Net;
using System.Text;
using Seedfall.Exchange.Lawns;
using Seedfall.Planning.Ground;

namespace Seedfall.Web.Tests;

/// <summary>Shapes taped from several lengths, typed in one line.</summary>
public sealed class TapedShapeTests : IDisposable
{
    private readonly App _app = new();

    [Fact]
    public async Task Pieces_are_added_and_taken_away()
    {
        var lawn = await _app.TakeOn(("shape", "pieces"), ("pieces.in", "ft"), ("pieces", "rectangle 60 40; half-circle 20; less circle 10; strip 30 3"));
        var expected = 2400.0 + (Math.PI * 100.0 / 2.0) - (Math.PI * 25.0) + 90.0;
        Assert.Equal(expected, PatchArea.Of((await Read(lawn)).Patches[0].Shape).SquareFeet, 1e-6);
        var leaf = await _app.Get(lawn + "/notes/patches/1");
        Assert.Contains("rectangle 60 40; half-circle 20; less circle 10; strip 30 3", WebUtility.HtmlDecode(leaf), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Three_sides_make_a_triangle()
    {
        // Heron's formula: sides 13, 14, 15 enclose 84 (a textbook example, from memory).
        var lawn = await _app.TakeOn(("shape", "sides"), ("side-1", "13"), ("side-1.unit", "m"), ("side-2", "14"), ("side-2.unit", "m"), ("side-3", "15"), ("side-3.unit", "m"));
        Assert.Equal(84.0, PatchArea.Of((await Read(lawn)).Patches[0].Shape).SquareMeters, 1e-9);
    }

    [Fact]
    public async Task Corners_taped_from_both_ends_of_a_line_make_an_outline()
    {
        // A rectangle 30 by 40 on a base line of 40: the far corners are 30 from one end and 50 from the other.
        var lawn = await _app.TakeOn(("shape", "taped"), ("line", "40"), ("line.unit", "ft"), ("corners", "A; B; left 50 30; left 30 50"));
        Assert.Equal(1200.0, PatchArea.Of((await Read(lawn)).Patches[0].Shape).SquareFeet, 1e-6);
    }

    [Theory]
    [InlineData("pieces", "pieces", "hexagon 3", "is no piece")]
    [InlineData("pieces", "pieces", "less circle 3", "before anything is taken away")]
    [InlineData("pieces", "pieces", "rectangle 60", "is no piece")]
    [InlineData("pieces", "pieces", "rectangle 10 10; less circle 40", "area")]
    [InlineData("taped", "corners", "A; B; up 3 4", "is no corner")]
    [InlineData("taped", "corners", "A; B; left 1 1", "corner")]
    public async Task What_cannot_be_is_said_and_nothing_typed_is_lost(string shape, string field, string text, string expected)
    {
        var answer = await _app.Post("/lawns/new", App.SoundLawn(("shape", shape), ("pieces.in", "ft"), ("line", "40"), ("line.unit", "ft"), (field, text)));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.Status);
        Assert.Contains(expected, App.Words(answer.Body), StringComparison.OrdinalIgnoreCase);
        Assert.Contains(WebUtility.HtmlEncode(text), answer.Body, StringComparison.Ordinal);
    }

    public void Dispose() => _app.Dispose();

    private async Task<Lawn> Read(string lawn) => LawnFile.Read(Encoding.UTF8.GetBytes(await _app.Get(lawn + "/lawn.json")), "lawn.json").Lawn!;
}
