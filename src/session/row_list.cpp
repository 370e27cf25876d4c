// SPDX-License-Identifier: MIT
#include "session/row_list.h"

namespace tripoise {

RowList::Said RowList::saidOf(int row) const
{
    Said said;
    const QHash<int, QByteArray> roles = roleNames();
    for (auto role = roles.keyBegin(); role != roles.keyEnd(); ++role)
        said[*role] = data(index(row), *role);
    return said;
}

QList<int> RowList::otherwise(const Said& before, const Said& now)
{
    QList<int> roles;
    for (auto said = now.begin(); said != now.end(); ++said)
        if (before.value(said.key()) != said.value())
            roles << said.key();
    return roles;
}

} // namespace tripoise
