using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Seedfall.Cli.Output;
using Seedfall.Photos.Cover;
using Seedfall.Photos.Reading;

namespace Seedfall.Cli.Commands;

/// <summary><c>seedfall cover FILE...</c>: green cover of straight-down photographs, each with its range and what makes it doubtful.</summary>
internal static class CoverCommand
{
    private static readonly JsonSerializerOptions Json = new() { WriteIndented = true, PropertyNamingPolicy = JsonNamingPolicy.CamelCase };
    private static readonly PhotoLimits Limits = PhotoLimits.Ordinary with { DecodeLongSide = GreenCover.LongSide };

    internal static Command Make(Streams streams)
    {
        var files = new Argument<string[]>("FILE") { Description = "Photographs taken straight down: JPEG, PNG, WebP or HEIC.", Arity = ArgumentArity.OneOrMore };
        var overlay = new Option<DirectoryInfo?>("--overlay") { Description = "Write each photograph with its green outlined to this folder.", HelpName = "DIR" };
        var card = new Option<string?>("--gray-card") { Description = "Where a gray card lies in every photograph: left,top,right,bottom as fractions.", HelpName = "L,T,R,B" };
        var json = CommandTree.Json();
        var command = new Command("cover", "Measure the green cover of straight-down photographs.") { files, overlay, card, json };
        command.SetAction((parsed, cancellation) => CommandTree.Guard(streams, () => Task.FromResult(
            Measure(parsed.GetValue(files)!, parsed.GetValue(overlay), Card(parsed.GetValue(card)), parsed.GetValue(json), streams, cancellation))));
        return command;
    }

    private static int Measure(string[] files, DirectoryInfo? overlays, PictureArea? card, bool json, Streams streams, CancellationToken cancellation)
    {
        using var output = overlays is null ? null : new OutputFolder(overlays.FullName);
        var (rows, worst) = (new List<CoverRow>(), ExitCode.Done);
        using (var progress = new ProgressBar(streams, "measuring"))
        {
            for (var i = 0; i < files.Length; i++)
            {
                cancellation.ThrowIfCancellationRequested();
                try
                {
                    rows.Add(One(files[i], card, output));
                }
                catch (CommandException e)
                {
                    streams.Remarks.WriteLine($"seedfall: {e.Message}");
                    worst = Math.Max(worst, e.ExitCode);
                }

                // A photograph leaves a hundred megabytes of large arrays behind, which the collector would let pile up through a batch.
                GC.Collect();
                progress.Report((i + 1.0) / files.Length);
            }
        }

        output?.Publish();
        Print(rows, json, streams.Results);
        return worst;
    }

    private static CoverRow One(string file, PictureArea? card, OutputFolder? output)
    {
        var photo = PhotoInput.Read(file, Limits);
        if (Math.Min(photo.Image.Width, photo.Image.Height) < GreenCover.LeastSide)
        {
            throw new CommandException(ExitCode.BadInput, $"{file}: expected a photograph of at least {GreenCover.LeastSide} pixels a side, found {photo.OriginalWidth} x {photo.OriginalHeight}");
        }

        var measure = GreenCover.Measure(photo.Image, new CoverOptions { GrayCard = card });
        output?.Add(Overlay(file, output.Names), CoverOverlay.Draw(photo.Image, measure.Mask));
        return new CoverRow(file, Math.Round(measure.Cover, 4), Math.Round(measure.Low, 4), Math.Round(measure.High, 4), [.. measure.Flags.Select(Name)]);
    }

    private static void Print(IReadOnlyList<CoverRow> rows, bool json, TextWriter output)
    {
        if (json)
        {
            output.WriteLine(JsonSerializer.Serialize(rows, Json));
            return;
        }

        output.WriteLine($"{"cover",7}{"low",7}{"high",7}  file");
        foreach (var row in rows)
        {
            var flags = row.Flags.Count > 0 ? $"  ({string.Join(", ", row.Flags)})" : "";
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{row.Cover,7:P1}{row.Low,7:P1}{row.High,7:P1}  {row.File}{flags}"));
        }
    }

    private static PictureArea? Card(string? text)
    {
        if (text is null)
        {
            return null;
        }

        var sides = text.Split(',').Select(part => double.TryParse(part, NumberStyles.Float, CultureInfo.InvariantCulture, out var side) && side is >= 0.0 and <= 1.0 ? side : double.NaN).ToArray();
        return sides.Length == 4 && sides[0] < sides[2] && sides[1] < sides[3]
            ? new PictureArea(sides[0], sides[1], sides[2], sides[3])
            : throw new CommandException(ExitCode.BadInput, $"--gray-card: expected left,top,right,bottom as fractions such as 0.05,0.8,0.15,0.95, found \"{text}\"");
    }

    /// <summary>The photograph's name with -cover behind it; numbered where two of the same name come from different folders.</summary>
    private static string Overlay(string file, IReadOnlyList<string> taken)
    {
        var name = Path.GetFileNameWithoutExtension(file);
        var candidate = $"{name}-cover.jpg";
        for (var n = 2; taken.Contains(candidate); n++)
        {
            candidate = $"{name}-cover-{n}.jpg";
        }

        return candidate;
    }

    private static string Name(CoverFlag flag) => JsonNamingPolicy.KebabCaseLower.ConvertName(flag.ToString());

    private sealed record CoverRow(string File, double Cover, double Low, double High, IReadOnlyList<string> Flags);
}
