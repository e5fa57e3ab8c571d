namespace Seedfall.Photos.Cover;

/// <summary>What ground and leaves look like in one picture, from the first look; leaned toward the usual where there is little of either.</summary>
internal readonly record struct PictureColors(
    float GroundGreenRed, float GroundGreenBlue, float GroundLight, float GroundSpread, float LeafGreenRed, float LeafGreenBlue, float Share, float Noise)
{
    /// <summary>Numbers that say how a picture as a whole differs from others.</summary>
    internal const int Count = 8;

    private const double GroundWeight = 0.03;
    private const double LeafWeight = 0.01;
    private const double UsualGroundGreenRed = -0.08;
    private const double UsualGroundGreenBlue = 0.12;
    private const double UsualGroundLight = -0.8;
    private const double UsualLeafGreenRedAbove = 0.20;
    private const double UsualLeafGreenBlueAbove = 0.12;
    private const int Step = 5;

    internal static PictureColors Of(ColorPlanes planes, float[] chances)
    {
        double ground = 0, red = 0, blue = 0, light = 0, squares = 0, leaf = 0, leafRed = 0, leafBlue = 0, share = 0, n = 0;
        for (var i = 0; i < chances.Length; i += Step, n++)
        {
            double p = chances[i], not = (1.0 - p) * (1.0 - p), r = planes.GreenRed[i], b = planes.GreenBlue[i];
            (ground, red, blue, light, squares) = (ground + not, red + (not * r), blue + (not * b), light + (not * planes.Light[i]), squares + (not * r * r));
            (leaf, leafRed, leafBlue, share) = (leaf + (p * p), leafRed + (p * p * r), leafBlue + (p * p * b), share + p);
        }

        double Lean(double sum, double weight, double usual, double of) => (sum + (of * n * usual)) / (weight + (of * n));
        var (groundRed, groundBlue) = (Lean(red, ground, UsualGroundGreenRed, GroundWeight), Lean(blue, ground, UsualGroundGreenBlue, GroundWeight));
        var mean = red / Math.Max(ground, 1e-9);
        var spread = Math.Sqrt(Math.Max(1e-4, (squares / Math.Max(ground, 1e-9)) - (mean * mean)));
        return new PictureColors(
            (float)groundRed, (float)groundBlue, (float)Lean(light, ground, UsualGroundLight, GroundWeight), (float)spread,
            (float)Lean(leafRed, leaf, groundRed + UsualLeafGreenRedAbove, LeafWeight), (float)Lean(leafBlue, leaf, groundBlue + UsualLeafGreenBlueAbove, LeafWeight),
            (float)(share / n), planes.Noise);
    }

    /// <summary>The eight numbers in the order the net was fitted with.</summary>
    internal void CopyTo(Span<float> to)
    {
        (to[0], to[1], to[2], to[3]) = (GroundGreenRed, GroundGreenBlue, GroundLight, GroundSpread);
        (to[4], to[5], to[6], to[7]) = (LeafGreenRed - GroundGreenRed, LeafGreenBlue - GroundGreenBlue, Share, Noise);
    }
}
