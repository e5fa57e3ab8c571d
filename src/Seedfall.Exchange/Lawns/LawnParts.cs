using Seedfall.Exchange.Json;
using Seedfall.Planning.Ground;

namespace Seedfall.Exchange.Lawns;

/// <summary>Parts of a lawn file by themselves, to paste into one.</summary>
public static class LawnParts
{
    /// <summary>A patch's <c>shape</c> as UTF-8 JSON.</summary>
    public static byte[] Shape(PatchShape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        return JsonText.Bytes(ShapeFormat.One, shape);
    }

    /// <summary>A patch's <c>measured</c> as UTF-8 JSON.</summary>
    public static byte[] Measured(Measuring measured)
    {
        ArgumentNullException.ThrowIfNull(measured);
        return JsonText.Bytes(MeasuringFormat.One, measured);
    }
}
