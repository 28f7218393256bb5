namespace LaunchSim.Passes.Logs;

/// <summary>Makes one space of several, and none at the beginning of a line.</summary>
internal sealed class SingleSpaces(TextReader inner) : TextReader
{
    private char _before = '\n';

    public override int Read(char[] buffer, int index, int count)
    {
        int read = inner.Read(buffer, index, count);
        while (read > 0)
        {
            int kept = 0;
            for (int i = 0; i < read; i++)
            {
                char c = buffer[index + i];
                if (c != ' ' || _before is not (' ' or '\n' or '\r'))
                {
                    buffer[index + kept++] = c;
                }

                _before = c;
            }

            if (kept > 0)
            {
                return kept;
            }

            read = inner.Read(buffer, index, count);
        }

        return 0;
    }
}
