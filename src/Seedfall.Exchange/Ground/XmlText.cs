using System.Text;
using System.Xml;

namespace Seedfall.Exchange.Ground;

/// <summary>XML written the same way every time: UTF-8, two blanks, line ends of one byte.</summary>
internal static class XmlText
{
    internal static byte[] Bytes(Action<XmlWriter> write)
    {
        var bytes = new MemoryStream();
        using (var writer = XmlWriter.Create(bytes, new XmlWriterSettings { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), Indent = true, NewLineChars = "\n", CloseOutput = false }))
        {
            write(writer);
        }

        bytes.WriteByte((byte)'\n');
        return bytes.ToArray();
    }

    internal static string Time(DateTimeOffset time) => XmlConvert.ToString(time.UtcDateTime, XmlDateTimeSerializationMode.Utc);

    /// <summary>A name without what XML cannot hold.</summary>
    internal static string Name(string name) => string.Concat(name.EnumerateRunes().Where(r => r.Value is not (0xFFFE or 0xFFFF) && (r.Value > 0xFFFF || XmlConvert.IsXmlChar((char)r.Value))));
}
