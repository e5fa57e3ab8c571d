namespace Seedfall.Photos.Cover;

/// <summary>
/// Straw, stubble and fallen leaves, which the photographs fitted on hardly have: redder than green and yellow, so like leaf in
/// ln(G/B) and unlike it in ln(G/R). However a net judges them, they are not living green.
/// </summary>
internal static class DryLeaf
{
    private const float GreenRedBelow = -0.05f;
    private const float GreenBlueAbove = 0.25f;
    private const float NotGreen = -2.5f;

    /// <summary>Holds the evidence of such pixels down.</summary>
    internal static void HoldDown(ColorPlanes planes, float[] evidence)
    {
        for (var i = 0; i < evidence.Length; i++)
        {
            if (planes.GreenRed[i] < GreenRedBelow && planes.GreenBlue[i] > GreenBlueAbove)
            {
                evidence[i] = Math.Min(evidence[i], NotGreen);
            }
        }
    }
}
