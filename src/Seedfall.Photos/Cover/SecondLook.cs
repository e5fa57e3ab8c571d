using System.Numerics;

namespace Seedfall.Photos.Cover;

/// <summary>Evidence for green of every pixel: the mean of the nets on its numbers, each held within what was seen in fitting.</summary>
internal static class SecondLook
{
    internal static float[] Evidence(PixelFeatures features, CoverModel model, int count)
    {
        var evidence = new float[count];
        Span<float> picture = stackalloc float[PictureColors.Count];
        features.Colors.CopyTo(picture);
        for (var j = 0; j < picture.Length; j++)
        {
            picture[j] = model.Standardize(PixelFeatures.PixelCount + j, picture[j]);
        }

        var constants = new float[model.Nets.Count][];
        for (var k = 0; k < constants.Length; k++)
        {
            constants[k] = model.Nets[k].Constants(picture);
        }

        var lanes = Vector<float>.Count;
        for (var at = 0; at < count; at += lanes)
        {
            Block(features, model, constants, Math.Min(at, Math.Max(0, count - lanes)), evidence);
        }

        return evidence;
    }

    private static void Block(PixelFeatures features, CoverModel model, float[][] constants, int at, float[] evidence)
    {
        Span<Vector<float>> numbers = stackalloc Vector<float>[PixelFeatures.PixelCount];
        var limit = new Vector<float>(CoverModel.Within);
        for (var j = 0; j < numbers.Length; j++)
        {
            var (plane, offset) = features[j];
            var x = (new Vector<float>(plane, at) - new Vector<float>(offset + model.Means[j])) * (1f / model.Scales[j]);
            numbers[j] = Vector.Min(Vector.Max(x, -limit), limit);
        }

        var sum = Vector<float>.Zero;
        for (var k = 0; k < constants.Length; k++)
        {
            sum += model.Nets[k].Evidence(numbers, constants[k]);
        }

        (sum * (1f / constants.Length)).CopyTo(evidence, at);
    }
}
