namespace Seedfall.Fit.Cover;

/// <summary>
/// What is fitted on for each photograph: itself, and its quarters, which are pictures too, with more and less cover. Copies strewn
/// with composed straw and squeezed as JPEG were tried and left out: they cost half a point on the photographs.
/// </summary>
internal static class CoverPieces
{
    internal static IEnumerable<CoverPhotograph> Of(CoverPhotograph whole)
    {
        yield return whole;
        var (width, height) = (whole.Image.Width / 2, whole.Image.Height / 2);
        for (var quarter = 0; quarter < 4; quarter++)
        {
            yield return whole.Crop(quarter % 2 * width, quarter / 2 * height, width, height);
        }
    }
}
