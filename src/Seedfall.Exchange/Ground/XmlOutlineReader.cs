using System.Xml;

namespace Seedfall.Exchange.Ground;

/// <summary>Elements of an XML outline file in turn, with those open around them; each kind of file says what it makes of them.</summary>
internal abstract class XmlOutlineReader(XmlReader reader)
{
    private readonly List<string> _open = [];

    /// <summary>The innermost open element.</summary>
    protected string Innermost => _open[^1];

    /// <summary>The file's own reader, at the node being read.</summary>
    protected XmlReader Node => reader;

    /// <summary>True inside an element of a name.</summary>
    protected bool Within(string element) => _open.Contains(element);

    internal void Read() => XmlWalk.Each(reader, Visit);

    /// <summary>The name an element goes by; its own without its namespace where nothing else is said.</summary>
    protected virtual string NameOf(XmlReader at) => at.LocalName;

    protected abstract void Start(string element);

    /// <summary>Text of the innermost element.</summary>
    /// <param name="parent">The element around it; empty where there is none.</param>
    protected abstract void Text(string parent);

    protected abstract void End(string element);

    private void Visit()
    {
        switch (reader.NodeType)
        {
            case XmlNodeType.Element:
                var empty = reader.IsEmptyElement;
                _open.Add(NameOf(reader));
                Start(reader.LocalName);
                if (empty)
                {
                    Close();
                }

                break;
            case XmlNodeType.EndElement:
                Close();
                break;
            case XmlNodeType.Text or XmlNodeType.CDATA:
                Text(_open.Count > 1 ? _open[^2] : "");
                break;
        }
    }

    private void Close()
    {
        var element = _open[^1];
        _open.RemoveAt(_open.Count - 1);
        End(element);
    }
}
