// Stands in for the header of the same path: the WebAssembly C++ library has no mutex, and an instance has one thread,
// so locking does nothing.
#pragma once

namespace boost::detail {

class lightweight_mutex {
 public:
  class scoped_lock {
   public:
    explicit scoped_lock(lightweight_mutex&) {}
    scoped_lock(const scoped_lock&) = delete;
    scoped_lock& operator=(const scoped_lock&) = delete;
  };
};

}  // namespace boost::detail
