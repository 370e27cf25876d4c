// SPDX-License-Identifier: MIT
#include "wording/size_words.h"

#include "wording/fit_words.h"
#include "wording/words.h"

namespace tripoise {

QString rankSign(int rank)
{
    constexpr char16_t first = u'①';
    constexpr int last = 20;
    return rank <= last ? QString(QChar(first + rank - 1)) : plain(rank);
}

QString rankedSize(const QString& name, int rank)
{
    return Words::tr("%1, rank %2", "a size").arg(name, plain(rank));
}

QString unfitSize(const QString& name, FitState state)
{
    return Words::tr("%1, %2", "a size, why it does not fit").arg(name, fitName(state));
}

} // namespace tripoise
