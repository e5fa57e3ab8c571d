using Seedfall.Photos.Cover;

namespace Seedfall.Fit.Cover;

/// <summary>Fits the whole measure on some photographs: first look, standards, nets.</summary>
internal static class CoverFit
{
    private const int FirstLookStep = 97;
    private const int SecondLookStep = 61;
    private const int Nets = 4;

    /// <param name="photographs">Those to fit on; one with a part mask is left aside.</param>
    internal static CoverModel Fit(IEnumerable<CoverPhotograph> photographs, DateOnly date)
    {
        var whole = photographs.Where(p => p.IsMaskWhole).ToList();
        var looked = whole.SelectMany(CoverPieces.Of).Select(p => (Photograph: p, Planes: ColorPlanes.Of(p.Image))).ToList();
        var firstLook = FirstLookOf(looked);
        var (rows, answers) = (new List<float[]>(), new List<float>());
        foreach (var (photograph, planes) in looked)
        {
            var features = PixelFeatures.Of(planes, firstLook);
            for (var i = SecondLookStep / 2; i < planes.Count; i += SecondLookStep)
            {
                var row = new float[PixelFeatures.Count];
                features.CopyTo(i, row);
                rows.Add(row);
                answers.Add(photograph.IsGreen[i] ? 1f : 0f);
            }
        }

        var (means, scales) = Standards(rows);
        foreach (var row in rows)
        {
            for (var j = 0; j < row.Length; j++)
            {
                row[j] = Math.Clamp((row[j] - means[j]) / scales[j], -CoverModel.Within, CoverModel.Within);
            }
        }

        return new CoverModel
        {
            About = "Green cover from photographs: first look (logistic), then small nets on nineteen standardized numbers of a pixel and its picture. See docs/science/green-cover.md.",
            Script = "bench/Seedfall.Fit, verb cover",
            Fitted = date,
            Photographs = [.. whole.Select(p => p.Name)],
            FirstLook = firstLook,
            Means = means,
            Scales = scales,
            Nets = [.. Enumerable.Range(1, Nets).Select(seed => NetFit.Fit(rows, answers, seed))],
            OffsetSpread = 1.0,
            RangeFactor = 1.0,
        };
    }

    private static double[] FirstLookOf(IEnumerable<(CoverPhotograph Photograph, ColorPlanes Planes)> looked)
    {
        var (rows, answers) = (new List<float[]>(), new List<float>());
        foreach (var (photograph, planes) in looked)
        {
            var least = FirstLook.Base(planes);
            for (var i = 0; i < planes.Count; i += FirstLookStep)
            {
                var row = new float[FirstLook.FeatureCount];
                FirstLook.Features(planes, least, i, row);
                rows.Add(row);
                answers.Add(photograph.IsGreen[i] ? 1f : 0f);
            }
        }

        return LogisticFit.Fit(rows, answers);
    }

    private static (float[] Means, float[] Scales) Standards(List<float[]> rows)
    {
        var (means, scales) = (new float[PixelFeatures.Count], new float[PixelFeatures.Count]);
        for (var j = 0; j < means.Length; j++)
        {
            var mean = rows.Average(row => (double)row[j]);
            means[j] = (float)mean;
            scales[j] = (float)Math.Sqrt(rows.Average(row => (row[j] - mean) * (row[j] - mean)) + 1e-9);
        }

        return (means, scales);
    }
}
