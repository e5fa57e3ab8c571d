namespace Seedfall.Photos.Cover;

/// <summary>How a picture's evidence z is to be read: trust times z plus bias, log odds.</summary>
internal readonly record struct EvidenceReading(double Bias, double Trust)
{
    internal double Of(double evidence) => (Trust * evidence) + Bias;
}
