using System.Collections;
using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading;

/// <summary>
/// SHA-256 of what a run sees: the resolved records in SI, property by property in the order of their names. How the
/// file was layered, ordered, commented or named does not enter; nor do doubts, choices and holes that are not in use.
/// </summary>
internal static class ContentDigest
{
    private static readonly ConcurrentDictionary<Type, PropertyInfo[]> Properties = new();

    public static string Of(params object?[] contents)
    {
        var text = new StringBuilder(4096);
        foreach (object? content in contents)
        {
            Write(text, content);
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())));
    }

    private static void Write(StringBuilder text, object? value)
    {
        switch (value)
        {
            case null:
                _ = text.Append("none;");
                break;
            case double number:
                // Zero has two signs and one meaning.
                _ = text.Append(CultureInfo.InvariantCulture, $"{(number == 0 ? 0.0 : number):R};");
                break;
            case string word:
                _ = text.Append(CultureInfo.InvariantCulture, $"{word.Length}:{word};");
                break;
            case Table table:
                Write(text, table.X.ToArray());
                Write(text, table.Y.ToArray());
                break;
            case IEnumerable list:
                _ = text.Append('[');
                foreach (object? item in list)
                {
                    Write(text, item);
                }

                _ = text.Append(']');
                break;
            case IConvertible other:
                _ = text.Append(other.ToString(CultureInfo.InvariantCulture)).Append(';');
                break;
            default:
                Type type = value.GetType();
                _ = text.Append(type.Name).Append('{');
                foreach (PropertyInfo property in Properties.GetOrAdd(type, Readable))
                {
                    _ = text.Append(property.Name).Append('=');
                    Write(text, property.GetValue(value));
                }

                _ = text.Append('}');
                break;
        }
    }

    private static PropertyInfo[] Readable(Type type) =>
        [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Where(property => property.GetIndexParameters().Length == 0 && (property.CanWrite || type.IsValueType))
            .OrderBy(property => property.Name, StringComparer.Ordinal)];
}
