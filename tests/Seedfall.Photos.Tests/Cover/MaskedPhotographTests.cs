using System.Globalization;
using Seedfall.Photos.Cover;
using Seedfall.Photos.Reading;

namespace Seedfall.Photos.Tests.Cover;

/// <summary>
/// The shipped measure on the photographs it was fitted on: guards against a broken build, not evidence. What it does on photographs
/// left out stands in docs/validation.md.
/// </summary>
public sealed class MaskedPhotographTests
{
    /// <summary>Hand-made masks: the Eschikon wheat segmentation set of ETH Zurich, CC BY-SA 4.0, not part of the project.</summary>
    [Fact]
    public void CoverIsNearTheMasksAndMostlyInsideTheRange()
    {
        var data = Environment.GetEnvironmentVariable("SEEDFALL_DATA");
        Assert.SkipWhen(string.IsNullOrEmpty(data), "SEEDFALL_DATA is not set: measured data is needed for this check");
        var folder = Path.Combine(data!, "photos");
        var (errors, inside) = (new List<double>(), 0);
        foreach (var row in File.ReadLines(Path.Combine(folder, "index.csv")).Skip(1).Select(line => line.Split(',')))
        {
            var measure = GreenCover.Measure(PhotoFile.Read(File.ReadAllBytes(Path.Combine(folder, "img", row[0]))).Photo!.Image);
            var truth = double.Parse(row[3], CultureInfo.InvariantCulture);
            errors.Add(Math.Abs(measure.Cover - truth));
            inside += truth >= measure.Low && truth <= measure.High ? 1 : 0;
            Assert.DoesNotContain(CoverFlag.PaperMulch, measure.Flags);
        }

        Assert.InRange(100.0 * errors.Average(), 0.0, 3.5);
        Assert.True(inside >= errors.Count * 9 / 10, $"{inside} of {errors.Count} inside");
    }
}
