using System.Globalization;
using System.Text.Json;
using Seedfall.Photos.Cover;

namespace Seedfall.Fit.Cover;

/// <summary>
/// Fits the green cover measure and validates it on photographs left out, one at a time.
/// <c>dotnet run -c Release --project bench/Seedfall.Fit -- cover [PHOTOS_DIR] [--date YYYY-MM-DD] [--keep]</c>
/// writes data/green-cover.json, the section of docs/validation.md and overlays under out/validation/cover, which are not to be
/// committed. <c>--keep</c> takes the left-out fits of the last run from there.
/// </summary>
internal static class CoverVerb
{
    private const string Folder = "out/validation/cover";

    internal static int Run(string[] args)
    {
        var folder = args.FirstOrDefault(a => !a.StartsWith('-') && Directory.Exists(a))
            ?? Path.Combine(Environment.GetEnvironmentVariable("SEEDFALL_DATA") ?? throw new InvalidOperationException("SEEDFALL_DATA is not set and no folder was given"), "photos");
        var dateAt = Array.IndexOf(args, "--date");
        var date = dateAt >= 0 ? DateOnly.ParseExact(args[dateAt + 1], "yyyy-MM-dd", CultureInfo.InvariantCulture) : DateOnly.FromDateTime(DateTime.UtcNow);
        Directory.CreateDirectory(Folder);
        var photographs = CoverPhotograph.Read(folder);
        var models = Models(photographs, date, args.Contains("--keep"));
        var biases = photographs.Zip(models.LeftOut, (p, m) => CoverScene.Of(p.Image, null, m).BiasToward(p.Truth)).ToList();
        var spread = Math.Sqrt(biases.Average(b => b * b) / 3.0); // t with three degrees of freedom: its variance is three times its scale squared
        var shipped = models.All with { OffsetSpread = spread };
        var scales = photographs.Zip(models.LeftOut, (p, m) => LeftOutCover.Of(p, m with { OffsetSpread = spread, RangeFactor = 1.0 })).ToList();
        var ratios = scales.Select(s => Math.Abs(s.Plain.Cover - s.Photograph.Truth) / s.Plain.HalfRange).ToList();
        shipped = shipped with { RangeFactor = RangeFit.Factor(ratios) };
        var outcomes = scales.Select((s, o) => LeftOutCover.Of(
            s.Photograph, s.Model with { RangeFactor = RangeFit.Factor(ratios.Where((_, i) => i != o)) })).ToList();
        foreach (var outcome in outcomes)
        {
            File.WriteAllBytes(Path.Combine(Folder, Path.ChangeExtension(outcome.Photograph.Name, ".jpg")), CoverOverlay.Draw(outcome.Photograph.Image, outcome.Plain.Mask));
            Console.WriteLine(CoverPage.Line(outcome));
        }

        File.WriteAllText("data/green-cover.json", JsonSerializer.Serialize(shipped, CoverModel.Json) + "\n");
        CoverPage.Write("docs/validation.md", shipped, outcomes);
        return 0;
    }

    private static (CoverModel All, CoverModel[] LeftOut) Models(IReadOnlyList<CoverPhotograph> photographs, DateOnly date, bool keep)
    {
        var kept = Path.Combine(Folder, "left-out.json");
        if (keep && File.Exists(kept))
        {
            var read = JsonSerializer.Deserialize<CoverModel[]>(File.ReadAllText(kept), CoverModel.Json)!;
            return (read[^1], read[..^1]);
        }

        var models = new CoverModel[photographs.Count + 1];
        Parallel.For(0, models.Length, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, o => models[o] = CoverFit.Fit(photographs.Where((_, i) => i != o), date));
        File.WriteAllText(kept, JsonSerializer.Serialize(models, CoverModel.Json));
        return (models[^1], models[..^1]);
    }
}
