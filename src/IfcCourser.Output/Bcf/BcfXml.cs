using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace IfcCourser.Output.Bcf;

/// <summary>XML as it is written into a BCF file.</summary>
internal static class BcfXml
{
    public static byte[] Bytes(XElement root)
    {
        using var stream = new MemoryStream();
        using (var xml = XmlWriter.Create(stream, new XmlWriterSettings { Indent = true, Encoding = new UTF8Encoding(false), NewLineChars = "\n", NewLineHandling = NewLineHandling.Replace }))
        {
            root.Save(xml);
        }

        return stream.ToArray();
    }
}
