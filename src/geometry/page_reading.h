// SPDX-License-Identifier: MIT
//
// The source of a page, out of the clipboard or a file, read beside the window's thread.
#pragma once

#include "geometry/table_work.h"
#include "session/beside.h"

#include <functional>
#include <string>

namespace tripoise {

struct PageOrder {
    std::string page;
    std::string plain;         ///< in place of a page without a table
    bool readableOnly = false; ///< a page's table that is none of geometry is no better than that
    bool offered = false;      ///< nobody asked for it: of no use unless it is a table of geometry
    TableWork work;            ///< what is said of the text so far; without text it is a new one
    std::string before;        ///< of the text, which stays
    std::string behind;
};

struct PageRead {
    TableWork work;
    TableAnswer answer; ///< of that
    bool offered = false;
    bool isNew = false; ///< another table
};

class PageReading {
public:
    /// `deliver` is called on the other thread; what was asked before is never delivered.
    using Deliver = std::function<void(quint64 number, PageRead)>;
    explicit PageReading(Deliver deliver);

    quint64 ask(PageOrder order) { return m_beside.ask(std::move(order)); }
    void letGo() { m_beside.letGo(); }

private:
    Deliver m_deliver;
    Beside<PageOrder> m_beside;
};

} // namespace tripoise
