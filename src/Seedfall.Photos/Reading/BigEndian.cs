using System.Buffers.Binary;

namespace Seedfall.Photos.Reading;

/// <summary>Numbers as picture files write them.</summary>
internal static class BigEndian
{
    internal static uint UInt32(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadUInt32BigEndian(bytes);

    internal static ushort UInt16(ReadOnlySpan<byte> bytes) => BinaryPrimitives.ReadUInt16BigEndian(bytes);
}
