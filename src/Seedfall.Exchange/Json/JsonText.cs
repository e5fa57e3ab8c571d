using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Seedfall.Exchange.Json;

/// <summary>Values as JSON text: indented, UTF-8, line feeds, the same bytes every time.</summary>
internal static class JsonText
{
    private static readonly JsonWriterOptions Options = new()
    {
        Indented = true,
        IndentSize = 2,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.Create(System.Text.Unicode.UnicodeRanges.All),
    };

    public static byte[] Bytes<T>(JsonFormat<T> format, T value)
    {
        var buffer = new ArrayBufferWriter<byte>(16384);
        using (var writer = new Utf8JsonWriter(buffer, Options))
        {
            format.Write(writer, value);
        }

        buffer.Write("\n"u8);
        return buffer.WrittenSpan.ToArray();
    }
}
